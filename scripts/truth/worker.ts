/** Runs trials in a process of its own; each result is kept as soon as it is there. Called by `scripts/truth.ts`. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { runTrial, type Trial } from "./run.ts";

const [, , folder = "", number = "0", trials = "[]"] = process.argv;
for (const trial of JSON.parse(trials) as Trial[]) {
  const result = await runTrial(trial, join(folder, `spill-${number}`));
  writeFileSync(join(folder, `${trial.scenario}-${trial.seed}.json`), JSON.stringify(result));
  console.log(`${trial.scenario}, seed ${trial.seed}: ${result.records} records`);
}
