import type { BookFile } from "../../publishing/contracts/book.ts";
import { chapterOf, shapesOf, stylesOf } from "./chapter.ts";

/** Reads a built page by its address on the host. */
export type ReadPage = (path: string) => string;

/** Number of the page each chapter begins on, by chapter id; undefined before it is known. */
export type ChapterPages = ReadonlyMap<string, number> | undefined;

/**
 * The whole book as one page of HTML: title, imprint, contents, parts, index.
 *
 * @param book what it is made of
 * @param readPage gives a built page
 * @param pages known from the first printing; without them the numbers stay blank, of the same width
 * @returns the page, and the addresses of the styles its chapters use
 * @example composeBook(book, readPage, undefined).html.startsWith("<!doctype html>") // true
 */
export function composeBook(
  book: BookFile,
  readPage: ReadPage,
  pages: ChapterPages,
): { html: string; styles: readonly string[] } {
  const listed = book.parts.flatMap(({ chapters }) => chapters);
  const ids = new Map(listed.map(({ path }, index) => [path, chapterId(index)]));
  const read = listed.map(({ path }) => readPage(path));
  const styles = [...new Set(read.flatMap(stylesOf))];
  const shapes = [...new Set(read.flatMap(shapesOf))];
  const bodies = listed.map(({ path, title }, index) => {
    const { id, html } = chapterOf(read[index] ?? "", chapterId(index), ids, path);
    return `<article class="chapter" id="${id}" aria-label="${escaped(title)}">${html}</article>`;
  });
  const html = [
    `<!doctype html><html lang="${book.language}"><head><meta charset="utf-8"><title>${escaped(book.title)}</title>`,
    ...styles.map((_, index) => `<link rel="stylesheet" href="style-${index}.css">`),
    '<link rel="stylesheet" href="book.css"></head><body class="book">',
    ...shapes,
    titlePage(book),
    contents(book, ids, pages),
    ...bodies,
    index(book, ids, pages),
    "</body></html>",
  ].join("\n");
  return { html, styles };
}

function chapterId(index: number): string {
  return `chapter-${index + 1}`;
}

function titlePage({ title, heading, summary, edition, notice, imprint }: BookFile): string {
  const lines = imprint
    .map(({ title: name, html }) => `<dt>${escaped(name)}</dt><dd>${withoutOwnLinks(html)}</dd>`)
    .join("");
  return `<header class="book-title"><p class="book-name">${escaped(title)}</p><h1>${escaped(heading)}</h1><p class="lead">${escaped(summary)}</p><p class="book-edition">${escaped(edition)}</p>${notice === "" ? "" : `<p class="book-notice">${escaped(notice)}</p>`}<dl class="imprint">${lines}</dl></header>`;
}

function contents({ words, parts, names }: BookFile, ids: ReadonlyMap<string, string>, pages: ChapterPages): string {
  const line = (target: string, title: string, note: string) =>
    `<li><a href="#${target}"><span>${escaped(title)}${note === "" ? "" : ` <i>${escaped(note)}</i>`}</span><b>${pages?.get(target) ?? ""}</b></a></li>`;
  const listed = parts.map(
    ({ title, chapters }) =>
      `<li><h2>${escaped(title)}</h2><ol>${chapters.map(({ path, title: name, note }) => line(ids.get(path) ?? "", name, note)).join("")}</ol></li>`,
  );
  const last = names.length === 0 ? "" : `<li><ol>${line("index-of-names", words.index, "")}</ol></li>`;
  return `<nav class="book-contents"><h1>${escaped(words.contents)}</h1><ol>${listed.join("")}${last}</ol></nav>`;
}

function index({ words, names }: BookFile, ids: ReadonlyMap<string, string>, pages: ChapterPages): string {
  if (names.length === 0) return "";
  const lines = names.map(({ name, scientific, path }) => {
    const id = ids.get(path) ?? "";
    const shown = scientific ? `<i>${escaped(name)}</i>` : escaped(name);
    return `<li><a href="#${id}"><span>${shown}</span><b>${pages?.get(id) ?? ""}</b></a></li>`;
  });
  return `<section class="book-index" id="index-of-names"><h1>${escaped(words.index)}</h1><ul>${lines.join("")}</ul></section>`;
}

/** Links to files of the site are of no use on paper. */
function withoutOwnLinks(html: string): string {
  return html.replace(/<a href="(?![a-z]+:)[^"]*">([\s\S]*?)<\/a>/g, "$1");
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
