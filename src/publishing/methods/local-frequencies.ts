import type { Scheme } from "../../scheme/scheme.ts";
import { type ClaimTold, percent, type Told, told } from "./statement.ts";

/** Local frequencies, as the methods page tells them, with what follows for their claim. */
export function localFrequenciesMethod({ settings }: Scheme, claim: ClaimTold): Told[] {
  const own = settings.change.local_frequency;
  return [
    told("local-does", { nearest: own.nearest, similar: own.most_similar }),
    told("local-formulas", { frequency: own.standard_frequency }),
    told("local-tells", { claim }),
    told("local-tells-not"),
    told("local-speaks", {
      taxa: own.minimum_taxa,
      benchmarks: own.minimum_benchmarks,
      squares: own.minimum_squares,
    }),
    told("local-few", { percent: percent(own.benchmark_share) }),
    told("local-source"),
    told("local-reading"),
  ];
}
