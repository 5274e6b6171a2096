import sax from "sax";
import type { Prepared } from "./prepared.ts";
import { ATTRIBUTES, ELEMENTS, isHarmlessStyle, isOwnReference } from "./svg-allowed.ts";

/** A drawing larger than this is no drawing for a page. */
const MOST_BYTES = 400_000;

/** No entity but those of XML: a drawing can define none. The types of sax do not know the option yet. */
const STRICT = { strictEntities: true } as sax.SAXOptions;

/**
 * An SVG drawing with nothing in it but shapes and text: elements and attributes that are not on the list are left out,
 * with all that is inside them; so is what runs, and what leads out of the file.
 *
 * @returns one file, its size from the view box; or why it is none
 * @example (prepareDrawing(Buffer.from('<svg viewBox="0 0 9 9" xmlns="…"><script/></svg>')) as { files: PreparedFile[] }).files[0]?.bytes.toString() // '<svg viewBox="0 0 9 9" …></svg>\n'
 */
export function prepareDrawing(bytes: Buffer): Prepared {
  if (bytes.length > MOST_BYTES)
    return { found: "is too large for a drawing", wayOut: "make it simpler, or give a picture" };
  const parser = sax.parser(true, STRICT);
  const out: string[] = [];
  const open: (string | undefined)[] = [];
  let [leftOut, viewBox, fault, sheet] = [0, "", "", ""];
  parser.onerror = (error) => {
    fault ||= error.message.split("\n")[0] ?? "";
    parser.error = null as unknown as Error;
  };
  parser.onopentag = ({ name, attributes }) => {
    const isPlace = leftOut === 0 && (open.length > 0 || name === "svg") && !open.includes("style");
    const kept = isPlace && ELEMENTS.has(name) ? name : undefined;
    open.push(kept);
    if (kept === undefined) leftOut += 1;
    else out.push(`<${name}${attributesOf(attributes as Record<string, string>)}>`);
    if (open.length === 1) viewBox = String(attributes["viewBox"] ?? "");
  };
  parser.onclosetag = () => {
    const name = open.pop();
    if (name === undefined) leftOut -= 1;
    else {
      // Judged whole: comments and elements within part a sheet into texts that are harmless one by one.
      if (name === "style" && isHarmlessStyle(sheet)) out.push(escapeText(sheet));
      if (name === "style") sheet = "";
      out.push(`</${name}>`);
    }
  };
  const text = (words: string) => {
    if (leftOut > 0 || open.length === 0) return;
    if (open.includes("style")) sheet += words;
    else out.push(escapeText(words));
  };
  parser.ontext = text;
  parser.oncdata = text;
  parser.write(bytes.toString("utf8").replace(/^\uFEFF/, "")).close();
  const [, , , width = 0, height = 0] =
    viewBox.match(/^\s*([-\d.]+)[\s,]+([-\d.]+)[\s,]+([\d.]+)[\s,]+([\d.]+)\s*$/)?.map(Number) ?? [];
  if (fault !== "") return { found: `is no well-formed SVG (${fault})`, wayOut: "save it again as plain SVG" };
  if (!(width > 0) || !(height > 0))
    return { found: "has no viewBox", wayOut: 'give its svg element a viewBox, such as "0 0 480 360"' };
  return {
    files: [
      {
        ending: ".svg",
        bytes: Buffer.from(`${out.join("")}\n`),
        source: { width: Math.round(width), height: Math.round(height), type: "image/svg+xml" },
      },
    ],
  };
}

function attributesOf(attributes: Readonly<Record<string, string>>): string {
  return Object.entries(attributes)
    .filter(([name, value]) => ATTRIBUTES.has(name) && isOwnReference(name, value))
    .map(([name, value]) => ` ${name}="${escapeText(value).replaceAll('"', "&quot;")}"`)
    .join("");
}

function escapeText(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}
