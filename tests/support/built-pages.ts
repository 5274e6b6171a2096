import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import path from "node:path";

/** One built page: its file and its text. */
export interface BuiltPage {
  readonly file: string;
  readonly html: string;
}

/** All HTML pages of a built site, by path. @example builtPages("/tmp/site")[0]?.file // "/tmp/site/404.html" */
export function builtPages(folder: string): BuiltPage[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".html"))
    .map((entry) => path.join(entry.parentPath, entry.name))
    .sort()
    .map((file) => ({ file, html: readFileSync(file, "utf8") }));
}

/** Text of a page without markup, scripts and attributes. @example visibleText("<p>a <b>b</b></p>") // "a b" */
export function visibleText(html: string): string {
  return html
    .replace(/<(script|style|template)[\s\S]*?<\/\1>/g, " ")
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ")
    .trim();
}

/**
 * Internal addresses that lead nowhere: a missing file, or a place that its page does not have.
 *
 * @param folder built site
 * @param base address prefix it was built for
 * @param alsoThere folder of files that are published beside the pages
 * @example deadLinks("/tmp/site", "/", "/tmp/published") // []
 */
export function deadLinks(folder: string, base: string, alsoThere: string): string[] {
  const pages = builtPages(folder);
  const ids = new Map(
    pages.map(({ file, html }) => [file, new Set([...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id))]),
  );
  const find = (address: string) =>
    [folder, alsoThere]
      .map((top) => path.join(top, address.slice(base.length - 1), address.endsWith("/") ? "index.html" : ""))
      .find((file) => existsSync(file) && statSync(file).isFile());
  return pages.flatMap(({ file, html }) =>
    [...html.matchAll(/ (?:href|src)="([^"]+)"/g)].flatMap(([, link = ""]) => {
      if (/^(?:https?:|mailto:)/.test(link)) return [];
      const [address = "", place] = link
        .replaceAll("&amp;", "&")
        .replace(/\?[^#]*/, "")
        .split("#");
      const target = address === "" ? file : address.startsWith(base) ? find(address) : undefined;
      const dead = target === undefined || (place !== undefined && place !== "" && !ids.get(target)?.has(place));
      return dead ? [`${path.relative(folder, file)}: ${link}`] : [];
    }),
  );
}
