import { existsSync, readdirSync, readFileSync } from "node:fs";
import { stripTypeScriptTypes } from "node:module";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** A file of the page, ready to be sent. */
export interface PageFile {
  type: string;
  body: Buffer | string;
}

const PAGE = fileURLToPath(new URL("page/", import.meta.url));
/** The site ships as source, in a clone and in the package alike. */
const SITE = fileURLToPath(new URL("../../../src/site/", import.meta.url));

/** Style sheets of the atlas the desk uses, so that it looks like what it is for. */
const STYLES = ["tokens.css", "base.css", "fonts.css", "tables.css", "pile.css", "ribbon.css", "charts.css"];

/** The desk's own, in the order in which they hold: what is for narrow screens and paper last. */
const OWN_STYLES = ["desk.css", "ledger.css", "record.css", "rulings.css", "sheets.css", "sizes.css"];

/**
 * The files of the page by their path behind the token: styles, fonts, and the page's modules, which are sent without
 * their types where this is a clone and as they were compiled in the package.
 *
 * @param at the path all of them stand under, such as "/token/"
 * @example pageFiles("/token/").get("desk.css")?.type // => "text/css; charset=utf-8"
 */
export function pageFiles(at: string): Map<string, PageFile> {
  const files = new Map<string, PageFile>();
  const modules = readdirSync(PAGE).filter((name) => /\.(ts|js)$/.test(name));
  for (const name of modules)
    files.set(name, {
      type: "text/javascript; charset=utf-8",
      body: name.endsWith(".ts") ? withoutTypes(join(PAGE, name)) : readFileSync(join(PAGE, name)),
    });
  const css = (text: string) => ({
    type: "text/css; charset=utf-8",
    body: text.replaceAll('url("/fonts/', `url("${at}fonts/`),
  });
  for (const name of readdirSync(PAGE).filter((file) => file.endsWith(".css")))
    files.set(name, css(readFileSync(join(PAGE, name), "utf8")));
  for (const name of STYLES) files.set(`styles/${name}`, css(readFileSync(join(SITE, "styles", name), "utf8")));
  for (const name of readdirSync(join(SITE, "public/fonts")).filter((file) => file.endsWith(".woff2")))
    files.set(`fonts/${name}`, { type: "font/woff2", body: readFileSync(join(SITE, "public/fonts", name)) });
  const shell = { type: "text/html; charset=utf-8", body: shellOf(at) };
  files.set("", shell);
  return files;
}

function shellOf(at: string): string {
  const entry = existsSync(join(PAGE, "main.ts")) ? "main.ts" : "main.js";
  const sheets = [...STYLES.map((name) => `styles/${name}`), ...OWN_STYLES];
  return readFileSync(join(PAGE, "desk.html"), "utf8")
    .replace("<!-- styles -->", sheets.map((name) => `<link rel="stylesheet" href="${at}${name}">`).join("\n    "))
    .replace("<!-- script -->", `<script type="module" src="${at}${entry}"></script>`);
}

/** Node warns once that taking types out is experimental; to who reads records that says nothing. */
function withoutTypes(path: string): string {
  const warn = process.emitWarning;
  process.emitWarning = () => {};
  try {
    return stripTypeScriptTypes(readFileSync(path, "utf8"));
  } finally {
    process.emitWarning = warn;
  }
}
