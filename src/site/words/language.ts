/** One build renders one language; the others are further builds beside it. */
export const DEFAULT_LANGUAGE = "en-GB";

/**
 * BCP 47 tag of the language the pages are rendered in; in the browser, of the page.
 *
 * @example language() // "en-GB"
 */
export function language(): string {
  if (typeof document === "undefined") return process.env["ATLAS_LANGUAGE"] ?? DEFAULT_LANGUAGE;
  return document.documentElement.lang || DEFAULT_LANGUAGE;
}

/**
 * A tag without script and region, by which catalogues and names are chosen.
 *
 * @example baseLanguage("en-GB") // "en"
 */
export function baseLanguage(tag: string): string {
  return tag.split("-")[0]?.toLowerCase() ?? "";
}
