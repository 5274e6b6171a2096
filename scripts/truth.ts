/**
 * Runs the measures of change on invented groups whose truth is known, and prints how often each calls a change where
 * there is none, finds one where there is, and holds the truth in its interval. Writes .build/truth/, and with --write the
 * table that every atlas shows on its methods page.
 *
 *   node scripts/truth.ts [--seeds 10] [--first-seed 1] [--scenarios still,doubled] [--species 100] [--visits 8000]
 *     [--demonstration 0] [--write]
 */
import { parseArgs } from "node:util";
import { printPerformance } from "./truth/print.ts";
import { DEMONSTRATION, SCENARIOS } from "./truth/scenarios.ts";
import { summarise } from "./truth/summary.ts";
import { runTrials } from "./truth/trials.ts";
import { writeTable } from "./truth/write-table.ts";

const { values } = parseArgs({
  options: {
    seeds: { type: "string", default: "10" },
    "first-seed": { type: "string", default: "1" },
    scenarios: { type: "string", default: SCENARIOS.map(({ id }) => id).join(",") },
    species: { type: "string", default: "100" },
    visits: { type: "string", default: "8000" },
    demonstration: { type: "string", default: "0" },
    processes: { type: "string", default: "2" },
    write: { type: "boolean", default: false },
  },
});
const from = (first: number, count: string) => Array.from({ length: Number(count) }, (_, index) => first + index);
const seeds = from(Number(values["first-seed"]), values.seeds);
const demonstrationSeeds = from(1, values.demonstration);
const [species, visits] = [Number(values.species), Number(values.visits)];
const trials = [
  ...seeds.flatMap((seed) => values.scenarios.split(",").map((scenario) => ({ scenario, seed, species, visits }))),
  ...demonstrationSeeds.map((seed) => ({ scenario: DEMONSTRATION.id, seed, species: 0, visits: 0 })),
];
const rows = summarise(await runTrials(trials, Number(values.processes)));
printPerformance(rows);
if (values.write) writeTable(rows, { seeds, demonstration_seeds: demonstrationSeeds, species, visits });
