/**
 * English text of the published tables in the language of a page. The tables are data, and say in English why a figure is
 * not given, what became of a record and what a file holds. The English messages of four topics are the patterns by
 * which such a text is known, and what stands in their places is put into the message of the page's language.
 */
import { type IntlMessageFormat as Format, IntlMessageFormat } from "intl-messageformat";
import { ENGLISH, type Key } from "./catalogue.ts";
import { markEnglish } from "./fallback.ts";
import { baseLanguage, language } from "./language.ts";
import { say } from "./say.ts";

/** Topics whose English messages are texts of the tables, word for word. */
const TOPICS = ["reason.", "fate.", "check.", "table."] as const;

type Parts = ReturnType<Format["getAst"]>;
/** Kinds of parts of a message, as the library numbers them. */
const [TEXT, NAME, NUMBER, PLURAL, COUNT] = [0, 1, 2, 6, 7] as const;
const DIGITS = "\\d[\\d,.]*(?<![,.])";

interface Pattern {
  readonly key: Key;
  readonly expression: RegExp;
  /** Which name each group of the expression is of, and whether it is a number. */
  readonly groups: readonly { readonly name: string; readonly isNumber: boolean }[];
}

/**
 * A text of the published tables in the language of the pages; one that no message knows stays English, and is marked.
 *
 * @param text as published; empty stays empty
 * @example sayPublished("12 comparable squares; 20 are needed") // "12 carrés comparables, il en faut 20" on French pages
 */
export function sayPublished(text: string): string {
  if (text === "" || baseLanguage(language()) === "en") return text;
  return known(text) ?? markEnglish(text);
}

/** Whether a text is one of the catalogue's. @example isPublishedText("no square in either period") // true */
export function isPublishedText(text: string): boolean {
  return messageOf(text) !== undefined;
}

/** What stands in the place of a name can be such a text itself: the years of a period, a way in which effort changed. */
function known(text: string): string | undefined {
  const found = messageOf(text);
  if (found === undefined) return undefined;
  // Each form of a plural has a group of its own, of which one matched.
  const values = found.groups.flatMap(({ name, isNumber }, at) => {
    const value = found.values[at];
    if (value === undefined) return [];
    return [[name, isNumber ? Number(value.replaceAll(",", "")) : (known(value) ?? value)] as const];
  });
  return say(found.key, Object.fromEntries(values));
}

function messageOf(
  text: string,
): { key: Key; groups: Pattern["groups"]; values: readonly (string | undefined)[] } | undefined {
  const fixed = texts().fixed.get(text);
  if (fixed !== undefined) return { key: fixed, groups: [], values: [] };
  for (const { key, expression, groups } of texts().patterns) {
    const match = expression.exec(text);
    if (match !== null) return { key, groups, values: match.slice(1) };
  }
  return undefined;
}

let made: { fixed: ReadonlyMap<string, Key>; patterns: readonly Pattern[] } | undefined;

/** Texts without a name by themselves; of the others those that say most of their own come first. */
function texts(): NonNullable<typeof made> {
  if (made !== undefined) return made;
  const keys = (Object.keys(ENGLISH) as Key[]).filter((key) => TOPICS.some((topic) => key.startsWith(topic)));
  const isFixed = (key: Key) => !ENGLISH[key].includes("{");
  made = {
    fixed: new Map(keys.filter(isFixed).map((key) => [ENGLISH[key], key])),
    patterns: keys
      .filter((key) => !isFixed(key))
      .sort((one, other) => ENGLISH[other].length - ENGLISH[one].length)
      .map(patternOf),
  };
  return made;
}

function patternOf(key: Key): Pattern {
  const groups: { name: string; isNumber: boolean }[] = [];
  const group = (name: string, isNumber: boolean) => {
    groups.push({ name, isNumber });
    return isNumber ? `(${DIGITS})` : "(.+?)";
  };
  const source = (parts: Parts, counted = ""): string =>
    parts
      .map((part) => {
        if (part.type === TEXT) return part.value.replace(/[\\^$.*+?()[\]{}|/]/g, "\\$&");
        if (part.type === NAME) return group(part.value, false);
        if (part.type === NUMBER) return group(part.value, true);
        if (part.type === COUNT) return group(counted, true);
        if (part.type !== PLURAL) throw new Error(`${key}: no such part can be recognised in a published text`);
        return `(?:${Object.values(part.options)
          .map(({ value }) => source(value, part.value))
          .join("|")})`;
      })
      .join("");
  const parts = new IntlMessageFormat(ENGLISH[key], "en", undefined, { ignoreTag: true }).getAst();
  return { key, expression: new RegExp(`^${source(parts)}$`), groups };
}
