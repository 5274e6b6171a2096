import type { AtlasFile } from "../publishing/contracts.ts";
import { withoutMarks } from "./words/fallback.ts";
import { say } from "./words/say.ts";

/**
 * The little of the styles that belongs to the scheme: its accent in light and dark, and the line at the foot
 * of printed pages. An accent that is not a hexadecimal colour is left out, so the program's own stays.
 *
 * @param atlas what names the scheme and its accent
 * @returns CSS text
 * @example schemeStyles({ ...atlas, accent: { light: "#8c2467", dark: "#f2a3d0" } }) // ":root:root{--accent:#8c2467}@media (…"
 */
export function schemeStyles({
  accent,
  title,
  edition,
  invented,
}: Pick<AtlasFile, "accent" | "title" | "edition" | "invented">): string {
  const light = isColour(accent.light) ? `:root:root{--accent:${accent.light}}` : "";
  const dark = isColour(accent.dark) ? `@media (prefers-color-scheme:dark){:root:root{--accent:${accent.dark}}}` : "";
  const foot = quoted(
    [say("layout.printed-foot", { title, edition: edition.id }), invented ? say("layout.invented") : ""]
      .filter(Boolean)
      .join(" "),
  );
  return `${light}${dark}@media print{:root:root{--accent:#000}@page{@bottom-left{content:${foot};font:7.5pt "Source Sans",sans-serif;color:#333}}}\n`;
}

function isColour(text: string): boolean {
  return /^#([0-9a-f]{3}|[0-9a-f]{6})$/i.test(text);
}

/** A CSS string; everything outside letters, digits and plain marks is escaped by code point. */
function quoted(text: string): string {
  return `"${withoutMarks(text).replace(/[^\p{L}\p{N} .,:;()–-]/gu, (sign) => `\\${sign.codePointAt(0)?.toString(16) ?? "20"} `)}"`;
}
