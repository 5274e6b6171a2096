import { CommanderError } from "commander";
import { Mistake } from "../mistake.ts";
import { diskFault } from "./disk-faults.ts";

/** How the program ends. */
export const EXIT = Object.freeze({
  /** Everything that was asked for was done. */
  done: 0,
  /** Our bug: something failed that should not. */
  failed: 1,
  /** The user's mistake: a setting, a file, an option, a full disk. The last atlas is as it was. */
  mistake: 2,
  /** `check` found records that are held back until somebody decides. */
  blocked: 3,
});

/**
 * Says on stderr what went wrong, and gives the exit code. Commander has said its own already.
 *
 * @example process.exitCode = tellEnding(new Mistake("--port", "is x", "give a number")) // => 2
 */
export function tellEnding(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.mistake;
  const mistake = error instanceof Mistake ? error : diskFault(error);
  if (mistake !== undefined) {
    process.stderr.write(`${mistake.message}\n`);
    return EXIT.mistake;
  }
  if (error instanceof Error && /^Out of Memory Error/.test(error.message)) {
    process.stderr.write(`the records do not fit in the memory they may use; give more with --memory\n`);
    return EXIT.mistake;
  }
  process.stderr.write(
    `Something failed that should not. Please report it with the lines below.\n${error instanceof Error ? error.stack : String(error)}\n`,
  );
  return EXIT.failed;
}
