import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Mistake } from "../mistake.ts";

/**
 * Keeps a work folder to one build, check or review desk at a time. The lock is a file that names the process; one left by a process that
 * is gone counts for nothing.
 *
 * @param folder absolute or relative path, made if missing
 * @returns a function that gives the folder free; it is also freed when the process exits
 * @throws Mistake when another process that is still running has it
 * @example const free = lockFolder(".build"); try { … } finally { free(); }
 */
export function lockFolder(folder: string): () => void {
  mkdirSync(folder, { recursive: true });
  const file = join(folder, "lock");
  if (!take(file)) {
    const holder = holderOf(file);
    if (holder !== undefined && isRunning(holder)) {
      throw new Mistake(
        "this scheme",
        `is in use by a build, a check or the review desk, in process ${holder}`,
        `wait for it, or end it and run this again`,
      );
    }
    rmSync(file, { force: true });
    if (!take(file)) throw new Mistake("this scheme", "has just been taken up by another process", "wait for it");
  }
  const free = () => {
    process.removeListener("exit", free);
    rmSync(file, { force: true });
  };
  process.on("exit", free);
  return free;
}

/** Makes the file only where there is none, which one process alone can do. */
function take(file: string): boolean {
  try {
    writeFileSync(file, `${process.pid}\n`, { flag: "wx" });
    return true;
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "EEXIST") return false;
    throw error;
  }
}

function holderOf(file: string): number | undefined {
  try {
    const pid = Number.parseInt(readFileSync(file, "utf8"), 10);
    return pid > 0 && pid !== process.pid ? pid : undefined;
  } catch {
    return undefined;
  }
}

/** Signal 0 only asks: https://nodejs.org/api/process.html#processkillpid-signal. A refusal means that it runs. */
function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}
