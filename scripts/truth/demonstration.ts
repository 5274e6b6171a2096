import { cpSync, rmSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { measureScheme } from "../../src/build/pipeline.ts";
import type { Progress } from "../../src/build/progress.ts";
import { EVIDENCE_SETS } from "../../src/measures/change/evidence-sets.ts";
import type { Trend } from "../../src/measures/change/trend.ts";
import { generateDemonstration } from "../demonstration/generate.ts";
import { rawCounts } from "./raw-counts.ts";
import { type TrialResult, verdictOf } from "./run.ts";
import { DEMONSTRATION } from "./scenarios.ts";

const CONTENT = fileURLToPath(new URL("../../content", import.meta.url));

/** Nothing changes in the demonstration's null truth. */
const UNCHANGED = { change: 1, tetrads: [1, 1], hectads: [1, 1], encounters: [1, 1] } as const;

const silent: Progress = { step: () => ({ update: () => {}, done: () => {} }), note: () => {}, close: () => {} };

/**
 * Makes the demonstration of a seed in which no species changes, measures it as a build does, and gives what each method
 * says of each taxon. Its recording grows, spreads north and west, and changes its sources.
 *
 * @param folder where it works; emptied before and after
 */
export async function runDemonstration(seed: number, folder: string): Promise<TrialResult> {
  rmSync(folder, { recursive: true, force: true });
  const content = join(folder, "content");
  cpSync(CONTENT, content, {
    recursive: true,
    filter: (path) => !["records", "review", "decisions.csv"].includes(basename(path)),
  });
  const made = {
    seed,
    truth: "null",
    outFolder: join(content, "records"),
    truthFolder: join(folder, "truth"),
  } as const;
  const { rows } = generateDemonstration(made);
  const { database, scheme } = await measureScheme({
    content,
    workFolder: join(folder, "work"),
    threads: 1,
    progress: silent,
  });
  const { periods } = scheme.settings;
  const trends = await database.rows<Trend>(
    "SELECT * FROM trends WHERE evidence_set = $set AND from_period = $from AND to_period = $to ORDER BY method, taxon_id",
    { set: EVIDENCE_SETS[0]?.id ?? "", from: periods.length - 2, to: periods.length - 1 },
  );
  const verdicts = [...(await rawCounts(database)), ...trends].map((trend) => verdictOf(trend, UNCHANGED));
  database.close();
  rmSync(folder, { recursive: true, force: true });
  return { scenario: DEMONSTRATION.id, seed, species: scheme.taxa.length, visits: 0, records: rows, verdicts };
}
