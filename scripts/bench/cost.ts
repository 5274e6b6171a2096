import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { type Outcome, PARTS, type Place } from "./parts.ts";

/** What one part cost. */
export interface Cost {
  /** Wall clock of the work. */
  seconds: number;
  /** Processor time of the whole process, all its threads. */
  processorSeconds: number;
  /** Largest resident set of the process. */
  megabytes: number;
  counts: Record<string, number>;
}

/**
 * Runs one part in a process of its own, so that its peak memory is its own.
 *
 * @param part a name of PARTS
 * @throws {Error} where the part fails
 * @example costOf("read", { folder: ".build/bench/1000000-300" }).megabytes // 500 or so
 */
export function costOf(part: string, place: Place): Cost {
  const self = fileURLToPath(import.meta.url);
  const child = spawnSync(process.execPath, [self, part, JSON.stringify(place)], {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "inherit"],
  });
  if (child.status !== 0) throw new Error(`${part} in ${place.folder} fails`);
  return JSON.parse(child.stdout.slice(child.stdout.lastIndexOf("\n") + 1)) as Cost;
}

async function runHere(name: string, place: Place): Promise<Cost> {
  const part = PARTS[name];
  if (part === undefined) throw new Error(`there is no part ${name}`);
  const begun = performance.now();
  const outcome: Outcome = await part(place);
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  return {
    seconds: outcome.seconds ?? (performance.now() - begun) / 1000,
    processorSeconds: (userCPUTime + systemCPUTime) / 1e6,
    megabytes: maxRSS / 1024,
    counts: outcome.counts ?? {},
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [, , part = "", place = "{}"] = process.argv;
  process.stdout.write(`\n${JSON.stringify(await runHere(part, JSON.parse(place) as Place))}`);
}
