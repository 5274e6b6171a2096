import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Trial, TrialResult } from "./run.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const WORKER = fileURLToPath(new URL("worker.ts", import.meta.url));

/** What the figures depend on: the measures of change, their settings, and how the country is invented. */
const SOURCES = ["src/measures", "src/scheme/measure-settings.ts", "scripts/truth", "scripts/demonstration"];
/** Measures that no trend is made from. */
const APART = /^src\/measures\/(season|range|regions|surroundings|coverage)\//;

/**
 * Hash of all sources that the figures depend on, so that results of other sources are never taken for theirs.
 *
 * @returns twelve hexadecimal digits
 */
export function hashOfSources(): string {
  const files = SOURCES.flatMap((path) =>
    path.endsWith(".ts")
      ? [path]
      : readdirSync(join(ROOT, path), { recursive: true, encoding: "utf8" }).map((name) => join(path, name)),
  ).filter((path) => /\.(ts|sql)$/.test(path) && !APART.test(path));
  const hash = createHash("sha256");
  for (const path of files.sort()) hash.update(path).update(readFileSync(join(ROOT, path)));
  return hash.digest("hex").slice(0, 12);
}

/** Where the result of a trial is kept. */
export function resultFile(folder: string, { scenario, species, visits, seed }: Trial): string {
  return join(folder, `${scenario}-${species}-${visits}-${seed}.json`);
}

/**
 * Runs trials, two at once, each of the two in a process of its own. Results stay in `.build/truth/`, so that a run that was
 * stopped goes on where it was.
 *
 * @returns one result a trial, in their order
 * @throws {Error} where a trial fails
 */
export async function runTrials(trials: readonly Trial[], processes = 2): Promise<TrialResult[]> {
  const folder = join(ROOT, ".build/truth", hashOfSources());
  mkdirSync(folder, { recursive: true });
  const missing = trials.filter((trial) => !existsSync(resultFile(folder, trial)));
  const shares = Array.from({ length: processes }, (_, number) => missing.filter((_, i) => i % processes === number));
  await Promise.all(shares.map((share, number) => runShare(folder, number, share)));
  return trials.map((trial) => JSON.parse(readFileSync(resultFile(folder, trial), "utf8")) as TrialResult);
}

function runShare(folder: string, number: number, trials: readonly Trial[]): Promise<void> {
  const child = spawn(process.execPath, [WORKER, folder, String(number), JSON.stringify(trials)], {
    stdio: ["ignore", "ignore", "inherit"],
  });
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("exit", (code) => (code === 0 ? resolve() : reject(new Error(`trials of process ${number} fail`))));
  });
}
