import { readFileSync, writeFileSync } from "node:fs";

/**
 * Makes a file that names this process, only where there is none: one process alone can.
 *
 * @returns whether it was made
 * @example takeMark(".build/lock") // => true, the first time
 */
export function takeMark(file: string): boolean {
  try {
    writeFileSync(file, `${process.pid}\n`, { flag: "wx" });
    return true;
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "EEXIST") return false;
    throw error;
  }
}

/** The process a mark names; undefined while it is being written, or where it is gone. */
export function holderOf(file: string): number | undefined {
  try {
    const pid = Number.parseInt(readFileSync(file, "utf8"), 10);
    return pid > 0 ? pid : undefined;
  } catch {
    return undefined;
  }
}

/** Signal 0 only asks: https://nodejs.org/api/process.html#processkillpid-signal. A refusal means that it runs. */
export function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}
