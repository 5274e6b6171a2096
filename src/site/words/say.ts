import { CATALOGUES, ENGLISH, type Key } from "./catalogue.ts";
import { escapeHtml } from "./escape-html.ts";
import { markEnglishWhole } from "./fallback.ts";
import { baseLanguage, DEFAULT_LANGUAGE, language } from "./language.ts";
import { formatMessage, type Tags, type Values } from "./message.ts";

export { language };

/**
 * The words of a key in the language of the build. A message the language lacks is said in English, and marked, so
 * that the page can say so (`fallback.ts`).
 *
 * @param key of the English catalogue
 * @param values of the names in braces
 * @param tags what becomes of tagged text, see {@link sayHtml}
 * @example say("layout.edition", { title: "The Carder Atlas", edition: "2025.1", date: "1 March 2025" }) // "The Carder Atlas, edition 2025.1, 1 March 2025."
 */
export function say(key: Key, values: Values = {}, tags?: Tags): string {
  const own = messages(language())[key];
  return own === undefined
    ? markEnglishWhole(formatMessage(ENGLISH[key], DEFAULT_LANGUAGE, values, tags))
    : formatMessage(own, language(), values, tags);
}

/**
 * The language a message will be said in: that of the build, or English where it lacks the message. For values that are
 * made by `Intl`, such as names of months, so that a sentence is of one language.
 *
 * @example languageOf("layout.species") // "en-GB"
 */
export function languageOf(key: Key): string {
  return messages(language())[key] === undefined ? DEFAULT_LANGUAGE : language();
}

/**
 * The same as HTML: values are escaped, and each name in angle brackets is a function that makes the markup.
 *
 * @example sayHtml("layout.wrong", { contact: "a@b.example" }, { a: (text) => `<a href="mailto:a@b.example">${text}</a>` })
 */
export function sayHtml(key: Key, values: Values, tags: Tags): string {
  const escaped = Object.fromEntries(
    Object.entries(values).map(([name, value]) => [name, typeof value === "number" ? value : escapeHtml(value)]),
  );
  return say(key, escaped, tags);
}

/**
 * Raw messages for a script of the page, which formats them itself: all keys that begin with one of the prefixes.
 *
 * @example messagesFor(["find."]) // { "find.nothing": "Nothing found for “{text}”.", … }
 */
export function messagesFor(prefixes: readonly string[]): Record<string, string> {
  const own = messages(language());
  const keys = (Object.keys(ENGLISH) as Key[]).filter((key) => prefixes.some((prefix) => key.startsWith(prefix)));
  return Object.fromEntries(keys.map((key) => [key, own[key] ?? ENGLISH[key]]));
}

const complete = new Map<string, boolean>();

/** Whether every message exists in a language; every page asks. @example isComplete("fr") // true */
export function isComplete(tag: string): boolean {
  const own = messages(tag);
  const known = complete.get(tag) ?? (Object.keys(ENGLISH) as Key[]).every((key) => own[key] !== undefined);
  complete.set(tag, known);
  return known;
}

function messages(tag: string): Readonly<Partial<Record<Key, string>>> {
  return CATALOGUES[baseLanguage(tag)] ?? ENGLISH;
}
