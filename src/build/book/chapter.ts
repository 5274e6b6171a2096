/** A built page made into a chapter: its main part, with ids of its own among all chapters. */

/** One chapter, ready to stand among others. */
export interface Chapter {
  readonly id: string;
  readonly html: string;
}

/**
 * The main part of a built page as a chapter. Ids become the chapter's own, and the styles find them again by
 * `data-place`; links to other pages lead to their chapter where the book has it, and are plain text where not.
 *
 * @param page text of the built page
 * @param id of the chapter
 * @param chapters ids of the book's chapters by address of their page
 * @param from address of the page, to which its relative links count
 * @throws Error where the page has no main part
 * @example chapterOf('<main id="main"><h2 id="when">When</h2></main>', "c1", new Map(), "/").html // '<h2 id="c1-when" data-place="when">When</h2>'
 */
export function chapterOf(page: string, id: string, chapters: ReadonlyMap<string, string>, from: string): Chapter {
  const main = page.match(/<main\b[^>]*>([\s\S]*)<\/main>/)?.[1];
  if (main === undefined) throw new Error(`the page of chapter ${id} has no main part`);
  const ids = new Set([...main.matchAll(/\sid="([^"]+)"/g)].map(([, name = ""]) => name));
  const own = (name: string) => (ids.has(name) ? `${id}-${name}` : name);
  const html = withoutScreenParts(main)
    .replace(/\sid="([^"]+)"/g, (_, name: string) => ` id="${own(name)}" data-place="${name}"`)
    .replace(/\s(aria-labelledby|aria-describedby|for|headers)="([^"]+)"/g, (_, attribute: string, names: string) => {
      return ` ${attribute}="${names.split(/\s+/).map(own).join(" ")}"`;
    })
    .replace(/\bhref="#([^"]+)"/g, (_, name: string) => `href="#${own(name)}"`)
    .replace(/url\(#([^)]+)\)/g, (_, name: string) => `url(#${own(name)})`);
  return { id, html: withLinks(html, chapters, from) };
}

/** Scripts, and what only a screen can use. */
function withoutScreenParts(html: string): string {
  return html.replace(/<script\b[\s\S]*?<\/script>/g, "").replace(/<noscript\b[\s\S]*?<\/noscript>/g, "");
}

function withLinks(html: string, chapters: ReadonlyMap<string, string>, from: string): string {
  return html.replace(
    /<a\b([^>]*)\shref="([^"#][^"]*)"([^>]*)>/g,
    (whole, before: string, href: string, after: string) => {
      if (/^[a-z]+:/i.test(href)) return whole;
      const path = new URL(href.replaceAll("&amp;", "&"), `http://book${from}`).pathname;
      const chapter = chapters.get(path);
      return chapter === undefined ? `<a${before}${after}>` : `<a${before} href="#${chapter}"${after}>`;
    },
  );
}

/**
 * Shapes a page draws by reference, which stand before its wrapper.
 *
 * @example shapesOf('<body><a class="skip">…</a><svg class="shapes">…</svg><div class="wrap">') // ['<svg class="shapes">…</svg>']
 */
export function shapesOf(page: string): string[] {
  const before = page.match(/<body[^>]*>([\s\S]*?)<div class="wrap">/)?.[1] ?? "";
  return [...before.matchAll(/<svg\b[\s\S]*?<\/svg>/g)].map(([shapes]) => shapes);
}

/** Addresses of a page's styles, in their order. @example stylesOf('<link rel="stylesheet" href="/a.css">') // ["/a.css"] */
export function stylesOf(page: string): string[] {
  return [...page.matchAll(/<link rel="stylesheet" href="([^"]+)"/g)].map(([, href = ""]) => href);
}

/**
 * Styles that know an element by its id know it by its place instead.
 *
 * @param css whole file
 * @example placedStyles("#where .map{color:#fff}") // '[data-place="where"] .map{color:#fff}'
 */
export function placedStyles(css: string): string {
  return css.replace(/[^{}]*\{/g, (selector) =>
    selector.startsWith("@") ? selector : selector.replace(/#([A-Za-z][\w-]*)/g, '[data-place="$1"]'),
  );
}
