/**
 * Tries the identification helper on invented sightings whose truth is known, and prints how often the true taxon is first
 * or in the first three, how often a wrong one is first with confidence, and whether chances are what they say. Writes
 * .build/identify-truth/, and with --write the figures that every atlas shows beside its helper.
 *
 *   node scripts/identify-truth.ts [--seed 1] [--sightings 2000] [--records 120000] [--write]
 */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { printSummary } from "./identify-truth/print.ts";
import { publishDemonstration } from "./identify-truth/publish-demonstration.ts";
import { summarise } from "./identify-truth/summary.ts";
import { readTables } from "./identify-truth/tables.ts";
import { runTrials } from "./identify-truth/trials.ts";

const FOLDER = fileURLToPath(new URL("../.build/identify-truth", import.meta.url));
const TABLE = fileURLToPath(new URL("../src/publishing/identify-truth.json", import.meta.url));

const { values } = parseArgs({
  options: {
    seed: { type: "string", default: "1" },
    sightings: { type: "string", default: "2000" },
    records: { type: "string", default: "120000" },
    write: { type: "boolean", default: false },
  },
});
const [seed, count, records] = [values.seed, values.sightings, values.records].map(Number) as [number, number, number];
const folder = await publishDemonstration(join(FOLDER, `${seed}-${records}`), { seed, records });
const summary = summarise(runTrials(readTables(folder), { seed, count }));
printSummary(summary);
if (values.write)
  writeFileSync(TABLE, `${JSON.stringify({ made: { seed, sightings: count, records }, ...summary }, null, 1)}\n`);
