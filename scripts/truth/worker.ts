/** Runs trials in a process of its own; each result is kept as soon as it is there. Called by `scripts/truth.ts`. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { runDemonstration } from "./demonstration.ts";
import { runTrial, type Trial } from "./run.ts";
import { DEMONSTRATION } from "./scenarios.ts";
import { resultFile } from "./trials.ts";

const [, , folder = "", number = "0", trials = "[]"] = process.argv;
for (const trial of JSON.parse(trials) as Trial[]) {
  const work = join(folder, `work-${number}`);
  const isDemonstration = trial.scenario === DEMONSTRATION.id;
  const result = await (isDemonstration ? runDemonstration(trial.seed, work) : runTrial(trial, work));
  writeFileSync(resultFile(folder, trial), JSON.stringify(result));
}
