import type { Scheme } from "../../scheme/scheme.ts";
import { type Told, told } from "./statement.ts";

/** What the methods page says of regions; nothing where the scheme has none. */
export function regionStatements({ regions, landSquares }: Scheme): Told[] {
  if (regions.length === 0) return [];
  return [
    told("regions-stated"),
    told("regions-square", { land: landSquares === null ? "no" : "yes" }),
    told("regions-boundary"),
    told("regions-sums"),
  ];
}
