import { FURTHER_VISITS } from "../../measures/neighbourhood/expected-taxa.ts";
import { LEAST_COVERED, LEAST_LAND_TETRADS, REACH_KM } from "../../measures/neighbourhood/measure-neighbourhood.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { type Told, told } from "./statement.ts";

/**
 * What came of hiding records of the demonstration, by `scripts/expected-held-out.ts`: chances told, their sum, those
 * that came true; and with half of the visits hidden, what the rest should find and what was found.
 */
const HELD_OUT = { all: 2125, foretold: 1100, found: 1038, more: 163, added: 233 };

/**
 * What the methods page says of taxa expected in squares and of squares that want a visit.
 *
 * @example expectedStatements({ minimum_visits: 5 })[0] // => { key: "methods.expected-what", values: {} }
 */
export function expectedStatements({ minimum_visits }: Pick<Scheme["settings"]["coverage"], "minimum_visits">): Told[] {
  return [
    told("expected-what"),
    told("expected-around", { km: REACH_KM, least: LEAST_COVERED, tetrads: LEAST_LAND_TETRADS }),
    told("expected-formula", { visits: minimum_visits }),
    told("expected-gain", { further: FURTHER_VISITS }),
    told("expected-held-out", HELD_OUT),
    told("expected-few"),
    told("expected-source"),
  ];
}
