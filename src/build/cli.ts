import { program } from "./commands.ts";
import { tellEnding } from "./endings.ts";

/**
 * Runs the program and says how it ended.
 *
 * @param words the command line after the program's name
 */
export async function main(words: readonly string[]): Promise<void> {
  try {
    await program().parseAsync([...words], { from: "user" });
  } catch (error) {
    process.exitCode = tellEnding(error);
  }
}

// A reader that has seen enough, as in "| head", is no failure.
for (const stream of [process.stdout, process.stderr])
  stream.on("error", (error: NodeJS.ErrnoException) => {
    process.exit(error.code === "EPIPE" ? undefined : tellEnding(error));
  });

// What fails while nobody waits for it, as a stream on a full disk does, ends like everything else.
process.on("uncaughtException", (error) => process.exit(tellEnding(error)));

await main(process.argv.slice(2));
