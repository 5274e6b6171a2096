import { claimsOf } from "./claims.ts";
import type { KnownTruthFile, KnownTruthRow } from "./contracts.ts";

const MADE = "";
const ROWS: readonly KnownTruthRow[] = [];

/** The table of the known truth as published, with what follows from it for each method's claim. */
export function knownTruthFile(): KnownTruthFile {
  return { made: MADE, rows: [...ROWS], claims: claimsOf(ROWS) };
}
