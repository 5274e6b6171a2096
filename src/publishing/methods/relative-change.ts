import type { Scheme } from "../../scheme/scheme.ts";
import { type ClaimTold, type Told, told } from "./statement.ts";

/** The relative change index, as the methods page tells it, with what follows for its claim. */
export function relativeChangeMethod({ settings }: Scheme, claim: ClaimTold): Told[] {
  const own = settings.change.relative;
  return [
    told("relative-does"),
    told("relative-formulas"),
    told("relative-tells", { claim }),
    told("relative-tells-not"),
    told("relative-speaks", { taxa: own.minimum_taxa, squares: own.minimum_squares }),
    told("relative-few"),
    told("relative-source"),
    told("relative-reading"),
  ];
}
