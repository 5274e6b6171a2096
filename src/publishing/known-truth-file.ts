import { readFileSync } from "node:fs";
import { claimsOf } from "./claims.ts";
import type { KnownTruthFile, KnownTruthRow } from "./contracts.ts";

/** The table as `npm run truth -- --write` leaves it; its rows hold more than an atlas shows. */
interface Table {
  made: { seeds: number[]; demonstration_seeds: number[]; species: number; node: string; engine: string };
  rows: KnownTruthRow[];
}

/**
 * The table of the known truth as published, with what follows from it for each method's claim.
 *
 * @example knownTruthFile().claims[0] // => { method: "squares_compared", claim: "none", reason: "" }
 */
export function knownTruthFile(): KnownTruthFile {
  const table = JSON.parse(readFileSync(new URL("known-truth.json", import.meta.url), "utf8")) as Table;
  const rows = table.rows.map(shown);
  return { made: inWords(table.made), rows, claims: claimsOf(rows) };
}

function shown(row: KnownTruthRow): KnownTruthRow {
  const { method, scenario, label, estimand, species, judged, called, called_error, median_bias, coverage } = row;
  const by_change = row.by_change.map((one) => ({
    change: one.change,
    judged: one.judged,
    more: one.more,
    fewer: one.fewer,
    coverage: one.coverage,
  }));
  return {
    ...{ method, scenario, label, estimand, species, judged, called, called_error, median_bias, coverage },
    by_change,
  };
}

function inWords({ seeds, demonstration_seeds, species, node, engine }: Table["made"]): string {
  if (seeds.length === 0) return "";
  const range = (numbers: number[]) =>
    numbers.length === 1 ? `seed ${numbers[0]}` : `seeds ${numbers[0]} to ${numbers.at(-1)}`;
  const demonstration =
    demonstration_seeds.length === 0
      ? ""
      : `, and of the demonstration with no change of species, ${range(demonstration_seeds)}`;
  return `Invented groups of ${species} species, ${range(seeds)}${demonstration}; Node ${node}, DuckDB ${engine}.`;
}
