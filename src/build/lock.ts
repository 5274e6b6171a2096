import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { Mistake } from "../mistake.ts";
import { holderOf, isRunning, takeMark } from "../review/process-mark.ts";

/**
 * Keeps a work folder to one build, check or review desk at a time. The lock is a file that names the process; one left by
 * a process that is gone counts for nothing.
 *
 * @param folder absolute or relative path, made if missing
 * @returns a function that gives the folder free; it is also freed when the process exits
 * @throws Mistake when another process that is still running has it
 * @example const free = lockFolder(".build"); try { … } finally { free(); }
 */
export function lockFolder(folder: string): () => void {
  mkdirSync(folder, { recursive: true });
  const file = join(folder, "lock");
  if (!takeMark(file)) {
    const holder = holderOf(file);
    if (holder !== undefined && holder !== process.pid && isRunning(holder)) {
      throw new Mistake(
        "this scheme",
        `is in use by a build, a check or the review desk, in process ${holder}`,
        `wait for it, or end it and run this again`,
      );
    }
    rmSync(file, { force: true });
    if (!takeMark(file)) throw new Mistake("this scheme", "has just been taken up by another process", "wait for it");
  }
  const free = () => {
    process.removeListener("exit", free);
    rmSync(file, { force: true });
  };
  process.on("exit", free);
  return free;
}
