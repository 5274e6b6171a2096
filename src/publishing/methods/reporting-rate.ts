import type { Scheme } from "../../scheme/scheme.ts";
import { type ClaimTold, type Told, told } from "./statement.ts";

/** The reporting rate of complete lists, as the methods page tells it, with what follows for its claim. */
export function reportingRateMethod({ settings }: Scheme, claim: ClaimTold): Told[] {
  const own = settings.change.reporting_rate;
  return [
    told("rate-does"),
    told("rate-formulas"),
    told("rate-tells", { claim }),
    told("rate-tells-not"),
    told("rate-speaks", {
      visits: own.minimum_visits,
      detections: own.minimum_detections,
      squares: own.minimum_squares,
    }),
    told("rate-few"),
    told("rate-source"),
    told("rate-reading"),
  ];
}
