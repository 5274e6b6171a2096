import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import packageJson from "../../package.json" with { type: "json" };
import type { Performance } from "./summary.ts";
import { hashOfSources } from "./trials.ts";

/** The table as committed: every atlas shows it on its methods page. */
export const TABLE = fileURLToPath(new URL("../../src/publishing/known-truth.json", import.meta.url));

/** What the table was made of and by. */
export interface Making {
  readonly seeds: readonly number[];
  /** Seeds of the demonstration. */
  readonly demonstration_seeds: readonly number[];
  readonly species: number;
  readonly visits: number;
}

/**
 * Writes the table, one row a line, so that two of them can be compared line by line. Figures have four decimals.
 *
 * @param rows from `summarise`
 */
export function writeTable(rows: readonly Performance[], making: Making): void {
  const versions = {
    node: process.versions.node,
    engine: packageJson.dependencies["@duckdb/node-api"],
    sources: hashOfSources(),
  };
  const lines = rows.map((row) =>
    JSON.stringify(row, (_, value) => (typeof value === "number" ? rounded(value) : value)),
  );
  const text = `{\n"made": ${JSON.stringify({ ...making, ...versions })},\n"rows": [\n${lines.join(",\n")}\n]\n}\n`;
  writeFileSync(TABLE, text);
}

function rounded(value: number): number {
  return Math.round(value * 10_000) / 10_000;
}
