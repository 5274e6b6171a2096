/**
 * Times all measures on invented groups over all the land, 4,000 hectads and 40 years, on two threads, each size in a
 * process of its own: what they cost, and how that grows with the number of species. Called by `scripts/bench.ts`.
 */
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { type Cost, costOf } from "./cost.ts";

const FOLDER = fileURLToPath(new URL("../../.build/bench/measures", import.meta.url));
const HEADS = ["species", "hectads", "visits", "records", "measures", "of that, trends", "processor", "memory"];

const said = (number = 0) => number.toLocaleString("en-GB");

function line(cells: readonly string[]): void {
  console.log(cells.map((cell) => cell.padStart(16)).join(""));
}

function costLine({ seconds, megabytes, counts }: Cost): void {
  const { species, hectads, visits, records, trends_ms: trends = 0, processor_ms: processor = 0 } = counts;
  line([
    ...[species, hectads, visits, records].map(said),
    `${seconds.toFixed(1)} s`,
    `${(trends / 1000).toFixed(1)} s`,
    `${(processor / 1000).toFixed(1)} s`,
    `${said(Math.round(megabytes))} MB`,
  ]);
}

const { values } = parseArgs({
  options: {
    species: { type: "string", default: "10,60,300,1000" },
    visits: { type: "string", default: "150000" },
  },
});
line(HEADS);
const costs = values.species.split(",").map((species) => {
  const group = { species: Number(species), visits: Number(values.visits) };
  const place = { folder: join(FOLDER, species), threads: 2, group };
  const cost = costOf("group", place);
  costLine(cost);
  return cost;
});
for (const [index, { seconds, counts }] of costs.entries()) {
  const before = costs[index - 1];
  if (before === undefined) continue;
  const times = (of: string) => ((counts[of] ?? 0) / (before.counts[of] ?? 1)).toFixed(1);
  const longer = (seconds / before.seconds).toFixed(1);
  console.log(`${times("species")} times the species, ${times("records")} times the records: ${longer} times as long`);
}
