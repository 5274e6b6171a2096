import { counted } from "../counted.ts";
import type { Options } from "../run-commands.ts";
import { findBrowser } from "./find-browser.ts";
import { writeBook } from "./write-book.ts";

/** Prints a built atlas as a book, and says where it is. */
export async function runBook(
  options: Pick<Options, "out" | "base" | "quiet"> & { file: string; language?: string; browser?: string },
): Promise<void> {
  const browser = findBrowser(options.browser);
  const log = (text: string) => void (options.quiet !== true && process.stderr.write(`${text}\n`));
  const pages = await writeBook({
    atlas: options.out,
    base: options.base,
    file: options.file,
    browser,
    log,
    ...(options.language === undefined ? {} : { language: options.language }),
  });
  process.stdout.write(`${options.file}: ${counted(pages, "page")}\n`);
}
