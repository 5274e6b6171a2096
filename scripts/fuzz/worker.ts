/** Tries the cases in a thread of its own, so that the other can see it hang. */
import { parentPort, workerData } from "node:worker_threads";
import { fileKind } from "./kinds/files.ts";
import { VALUE_KINDS } from "./kinds/index.ts";
import { runKind } from "./run-kind.ts";
import type { Kind } from "./trial.ts";

/** What the thread is given. `heart` holds the number of the kind and of the case that is being tried. */
export interface Work {
  cases: number;
  seed: number;
  only: string | undefined;
  single: number | undefined;
  heart: Int32Array<SharedArrayBuffer>;
}

const { cases, seed, only, single, heart } = workerData as Work;
const files = await fileKind();
const kinds = [...VALUE_KINDS, files as Kind];
parentPort?.postMessage({ kinds: kinds.map(({ name }) => name) });
for (const [number, kind] of kinds.entries()) {
  if (only !== undefined && !kind.name.includes(only)) continue;
  const share = only === undefined ? kind.share : 1;
  const [from, to] = single === undefined ? [0, Math.ceil(cases * share)] : [single, single + 1];
  const tell = (index: number) => {
    heart[0] = number;
    heart[1] = index;
  };
  parentPort?.postMessage({ tally: await runKind(kind, { seed, from, to, tell }) });
}
files.close();
