import type { AtlasFile } from "../../../publishing/contracts.ts";
import { ENGLISH, type Key } from "../../words/catalogue.ts";
import { escapeHtml } from "../../words/escape-html.ts";
import { marksInItem } from "../../words/fallback.ts";
import type { Tags } from "../../words/message.ts";
import { say } from "../../words/say.ts";
import { inWords } from "../text/numbers.ts";
import { capital } from "../text/words.ts";

type Statement = Pick<AtlasFile["methods"][number], "key" | "values">;

const element = (name: string) => (text: string) => `<${name}>${text}</${name}>`;

/** What the messages of the methods page may hold. */
const TAGS: Tags = {
  ...Object.fromEntries(["b", "i", "sub", "sup", "p", "li"].map((name) => [name, element(name)])),
  formula: (text) => `<p class="formula">${text}</p>`,
  truth: (text) => `<a href="#known-truth">${text}</a>`,
};

/**
 * A statement of the methods page as HTML.
 *
 * @param statement its key and values, which are text
 * @throws Error on a key the catalogue lacks, which is our bug
 * @example statementHtml({ key: "methods.coverage-named", values: {} }) // => "Every visit names a recorder."
 */
export function statementHtml({ key, values }: Statement): string {
  if (!isKey(key)) throw new Error(`no words for ${key}`);
  const said = Object.entries(values).map(([name, value]) => {
    if (typeof value === "number") return [name, value] as const;
    return [name, typeof value === "string" ? escapeHtml(value) : statementHtml(value)] as const;
  });
  const words = typeof values["n"] === "number" ? { words: capital(inWords(values["n"])) } : {};
  return marksInItem(say(key, { ...words, ...Object.fromEntries(said) }, TAGS).trim());
}

function isKey(key: string): key is Key {
  return Object.hasOwn(ENGLISH, key);
}

/** The heading of a section. @example sectionHeading("range") // => "Range" */
export function sectionHeading(section: string): string {
  return statementHtml({ key: `methods.section-${section}`, values: {} });
}

/**
 * The blocks of a section: each statement by itself, those that are items of a list together.
 *
 * @example blocksOf(["One.", "<li>a</li>", "<li>b</li>"]) // => ["One.", "<ul><li>a</li><li>b</li></ul>"]
 */
export function blocksOf(statements: readonly string[]): string[] {
  const blocks: string[] = [];
  for (const html of statements) {
    const before = blocks.at(-1);
    const isItem = html.startsWith("<li>");
    if (isItem && before?.endsWith("</ul>") === true) blocks.splice(-1, 1, before.replace(/<\/ul>$/, `${html}</ul>`));
    else blocks.push(isItem ? `<ul>${html}</ul>` : html);
  }
  return blocks;
}
