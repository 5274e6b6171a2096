import { rmSync } from "node:fs";
import { setTimeout } from "node:timers/promises";
import { Mistake } from "../mistake.ts";
import { holderOf, isRunning, takeMark } from "./process-mark.ts";

const WAIT = 20;
const PATIENCE = 10_000;

/**
 * Waits until no other process holds a mark, and holds it: for the moment in which a file is read and replaced. A mark
 * left by a process that is gone counts for nothing.
 *
 * @param mark path of the file that stands as the mark
 * @returns a function that gives it free
 * @throws {Mistake} where another process keeps it for ten seconds
 * @example const free = await holdFile("content/review/decisions.csv.held"); try { … } finally { free(); }
 */
export async function holdFile(mark: string): Promise<() => void> {
  for (const end = Date.now() + PATIENCE; ; ) {
    if (takeMark(mark)) return () => rmSync(mark, { force: true });
    const holder = holderOf(mark);
    if (holder !== undefined && !isRunning(holder)) rmSync(mark, { force: true });
    else if (Date.now() > end)
      throw new Mistake(
        "decisions.csv",
        "is being written by another process",
        `see that it ends, then remove ${mark}`,
      );
    else await setTimeout(WAIT);
  }
}
