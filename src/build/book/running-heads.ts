import type { BookFile } from "../../publishing/contracts/book.ts";

/**
 * Styles that put each chapter's title at the head of its pages, and the atlas at the foot of all. Chromium's pages
 * cannot take a text from the page, so each chapter is a kind of page of its own.
 *
 * @example runningHeads(book).includes('@page chapter-1{@top-right{content:"About the atlas"') // true
 */
export function runningHeads({ parts, title, edition, notice }: BookFile): string {
  const chapters = parts.flatMap(({ chapters: listed }) => listed);
  const kinds = chapters.map(({ title: name }, index) => {
    const id = `chapter-${index + 1}`;
    return `#${id}{page:${id}}@page ${id}{@top-right{content:${quoted(name)}}}`;
  });
  const invented = notice === "" ? "" : ` ${notice.split(/(?<=\.)\s/)[0] ?? ""}`;
  return `@page{@bottom-left{content:${quoted(`${title}. ${edition}.${invented}`)}}}\n${kinds.join("\n")}\n`;
}

/** A CSS string; everything outside letters, digits and plain marks is escaped by code point. */
function quoted(text: string): string {
  return `"${text.replace(/[^\p{L}\p{N} .,:;()–’-]/gu, (sign) => `\\${sign.codePointAt(0)?.toString(16) ?? "20"} `)}"`;
}
