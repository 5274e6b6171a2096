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

await main(process.argv.slice(2));
