/** Drawings taken from pages and written so that two that look alike read alike. */
import sax from "sax";

/** Attributes that hold numbers of the drawing. */
const GEOMETRY = /^(?:d|transform|viewBox|points|[xy][12]?|c[xy]|r|width|height|dy?|offset|patternTransform)$/;
const NUMBER = /[-+]?(?:\d+\.?\d*|\.\d+)/g;

/**
 * One element of a page with all that it holds, found by the beginning of its tag.
 *
 * @param html text of a page
 * @param tag name of the element
 * @param opening what its tag holds, word for word
 * @throws Error where the page has none
 * @example elementOf('<p><svg class="a"><svg/></svg></p>', "svg", 'class="a"') // '<svg class="a"><svg/></svg>'
 */
export function elementOf(html: string, tag: string, opening: string): string {
  const tags = new RegExp(`<(/?)${tag}\\b[^>]*?(/?)>`, "g");
  let [start, depth] = [-1, 0];
  for (const match of html.matchAll(tags)) {
    if (start < 0 && (match[1] === "/" || !match[0].includes(opening))) continue;
    if (start < 0) start = match.index;
    if (match[2] !== "/") depth += match[1] === "/" ? -1 : 1;
    if (depth === 0) return html.slice(start, match.index + match[0].length);
  }
  throw new Error(`no ${tag} with ${opening}`);
}

/**
 * A drawing with one element a line, attributes in the order of their names, and numbers to one decimal.
 *
 * @param markup well-formed
 * @example normalSvg('<g y="1.26" x="2"><path d="M.25.31h2"/></g>') // '<g x="2" y="1.3">\n  <path d="M 0.3 0.3 h 2">\n'
 */
export function normalSvg(markup: string): string {
  const lines: string[] = [];
  let depth = 0;
  const parser = sax.parser(true, { trim: true, normalize: true });
  parser.onerror = (error) => {
    throw error;
  };
  const write = (text: string) => lines.push(`${"  ".repeat(depth)}${text}`);
  parser.onopentag = ({ name, attributes }) => {
    const pairs = Object.entries(attributes as Record<string, string>).sort(([one], [other]) => (one < other ? -1 : 1));
    write(
      `<${[name, ...pairs.map(([key, value]) => `${key}="${GEOMETRY.test(key) ? rounded(value) : value}"`)].join(" ")}>`,
    );
    depth += 1;
  };
  parser.onclosetag = () => {
    depth -= 1;
  };
  parser.ontext = (text) => {
    if (text !== "") write(text);
  };
  parser.write(markup).close();
  return `${lines.join("\n")}\n`;
}

/** Numbers to one decimal, each parted from what stands beside it. */
function rounded(text: string): string {
  const parted = text.replace(NUMBER, (number) => ` ${String(Math.round(Number(number) * 10) / 10 + 0)} `);
  return parted
    .replace(/ +(?=[%)])/g, "")
    .replace(/\( +/g, "(")
    .replace(/\s+/g, " ")
    .trim();
}
