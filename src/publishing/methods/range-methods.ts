import type { Scheme } from "../../scheme/scheme.ts";
import { type Told, told } from "./statement.ts";

/** What the methods page says of area of occupancy and extent of occurrence. */
export function rangeStatements({ settings }: Scheme): Told[] {
  return [
    told("range-occupancy"),
    told("range-origin", { several: settings.territories.length > 1 ? "yes" : "no" }),
    told("range-extent"),
    told("range-counts", { left: settings.range.not_established.join(", ") }),
    told("range-thresholds"),
  ];
}
