import type { Scheme } from "../../scheme/scheme.ts";
import { percent, type Told, told } from "./statement.ts";

/** Squares compared, as the methods page tells it; it never claimed a correction. */
export function squaresComparedMethod({ settings: { change, coverage } }: Scheme): Told[] {
  return [
    told("squares-does"),
    told("squares-formulas"),
    told("squares-tells"),
    told("squares-tells-not"),
    told("squares-speaks", {
      squares: change.minimum_comparable_squares,
      least: coverage.minimum_visits,
      more: coverage.stricter_minimum_visits ?? 2 * coverage.minimum_visits,
      percent: percent(change.minimum_tetrad_share),
    }),
    told("squares-few"),
    told("squares-source"),
    told("squares-reading"),
  ];
}
