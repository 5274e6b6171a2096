import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { Mistake } from "../../mistake.ts";
import { BookFile } from "../../publishing/contracts/book.ts";
import { serve } from "../serve.ts";
import { placedStyles } from "./chapter.ts";
import { type ChapterPages, composeBook } from "./compose-book.ts";
import type { PrintingBrowser } from "./find-browser.ts";
import { numberOfPages, pagesOfPlaces, settled } from "./pdf-places.ts";
import { printPage } from "./print-page.ts";
import { runningHeads } from "./running-heads.ts";

export interface BookOptions {
  /** A built atlas. */
  atlas: string;
  /** Address prefix it was built for. */
  base: string;
  /** One of its further languages; its first where undefined. */
  language?: string;
  /** The PDF to write. */
  file: string;
  browser: PrintingBrowser;
  /** Hears what is being done. */
  log?: (text: string) => void;
}

const OWN_STYLES = fileURLToPath(new URL("book.css", import.meta.url));
/** Numbers in the contents may move a page; they have never moved twice. */
const MOST_PRINTINGS = 3;

/**
 * Prints a built atlas as one book with contents and page numbers. It is printed twice: the first printing tells on
 * which page each chapter begins, the second says so in the contents and the index.
 *
 * @returns how many pages it has
 * @throws {Mistake} where the folder holds no atlas, or not in that language
 * @throws Error where the numbers do not settle, or the browser fails
 * @example await writeBook({ atlas: "atlas", base: "/", file: "atlas.pdf", browser }) // => 68
 */
export async function writeBook({
  atlas,
  base,
  language,
  file,
  browser,
  log = () => {},
}: BookOptions): Promise<number> {
  const book = readBook(atlas, language);
  const readPage = (path: string) => readFileSync(join(atlas, inFolder(path, base), "index.html"), "utf8");
  const folder = workFolder(atlas);
  const serving = await serve({ folder, port: 0, base });
  try {
    let pages: ChapterPages;
    for (let printing = 1; printing <= MOST_PRINTINGS; printing++) {
      const { html, styles } = composeBook(book, readPage, pages);
      styles.forEach((href, index) =>
        writeFileSync(
          join(folder, `style-${index}.css`),
          placedStyles(readFileSync(join(atlas, inFolder(href, base)), "utf8")),
        ),
      );
      writeFileSync(join(folder, "book.css"), readFileSync(OWN_STYLES, "utf8") + runningHeads(book));
      writeFileSync(join(folder, "book.html"), html);
      log(printing === 1 ? "printing to count the pages" : "printing with the numbers");
      const pdf = await printPage(browser, `${serving.address}book.html`);
      const counted = pagesOfPlaces(pdf);
      if (counted.size === 0) throw new Error(`${browser.program} named no place in the PDF: use a newer Chromium`);
      if (pages !== undefined && same(pages, counted)) {
        write(resolve(file), settled(pdf, book.day));
        return numberOfPages(pdf);
      }
      pages = counted;
    }
    throw new Error("the page numbers of the book do not settle");
  } finally {
    await serving.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

function readBook(atlas: string, language: string | undefined): BookFile {
  const file = join(atlas, language ?? "", "book.json");
  if (existsSync(file)) return BookFile.parse(JSON.parse(readFileSync(file, "utf8")));
  if (language !== undefined && existsSync(join(atlas, "book.json")))
    throw new Mistake(
      "--language",
      `is ${language}, which this atlas has no pages in`,
      "name one of languages in atlas.yaml, and build again",
    );
  throw new Mistake("folder of the atlas", `${atlas} holds no atlas`, "build it first, or name its folder with --out");
}

/** A folder with the atlas in it by links, in which the book can be laid beside the atlas's own files. */
function workFolder(atlas: string): string {
  const folder = mkdtempSync(join(tmpdir(), "atlaswright-book-"));
  for (const name of readdirSync(atlas)) {
    const from = resolve(atlas, name);
    symlinkSync(from, join(folder, name), "junction");
  }
  return folder;
}

function inFolder(address: string, base: string): string {
  return address.startsWith(base) ? address.slice(base.length) : address;
}

function same(one: ReadonlyMap<string, number>, other: ReadonlyMap<string, number>): boolean {
  return one.size === other.size && [...one].every(([name, page]) => other.get(name) === page);
}

/** In one step, so that a book that is there is never half a book. */
function write(file: string, pdf: Buffer): void {
  const beside = `${file}.part`;
  writeFileSync(beside, pdf);
  renameSync(beside, file);
}
