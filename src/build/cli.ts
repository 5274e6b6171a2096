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
    if (error.code !== "EPIPE") throw error;
    process.exit();
  });

await main(process.argv.slice(2));
