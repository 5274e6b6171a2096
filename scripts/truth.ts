/**
 * Runs the measures of change on invented groups whose truth is known, and prints how often each calls a change where
 * there is none, finds one where there is, and holds the truth in its interval. Writes .build/truth/, and with --write the
 * table that every atlas shows on its methods page.
 *
 *   node scripts/truth.ts [--seeds 10] [--first-seed 1] [--scenarios still,doubled] [--species 100] [--visits 8000] [--write]
 */
import { parseArgs } from "node:util";
import { printPerformance } from "./truth/print.ts";
import { SCENARIOS } from "./truth/scenarios.ts";
import { summarise } from "./truth/summary.ts";
import { runTrials } from "./truth/trials.ts";

const { values } = parseArgs({
  options: {
    seeds: { type: "string", default: "10" },
    "first-seed": { type: "string", default: "1" },
    scenarios: { type: "string", default: SCENARIOS.map(({ id }) => id).join(",") },
    species: { type: "string", default: "100" },
    visits: { type: "string", default: "8000" },
    processes: { type: "string", default: "2" },
  },
});
const seeds = Array.from({ length: Number(values.seeds) }, (_, index) => Number(values["first-seed"]) + index);
const trials = values.scenarios
  .split(",")
  .flatMap((scenario) =>
    seeds.map((seed) => ({ scenario, seed, species: Number(values.species), visits: Number(values.visits) })),
  );
printPerformance(summarise(await runTrials(trials, Number(values.processes))));
