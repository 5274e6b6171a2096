import { marksBefore } from "../../words/fallback.ts";
import { language } from "../../words/language.ts";
import { grouped } from "./grouped.ts";
import { inWords } from "./numbers.ts";

const UNCHANGED = /(?:species|series|sheep|deer|fish|larvae|pupae|exuviae)$/i;

/**
 * The plural of an English noun by the regular rules, and of the few words of the trade that have none. English alone:
 * a message of the catalogue says its own plurals, and a scheme's nouns bring theirs.
 *
 * @example plural("worker") // "workers"
 * @example plural("species") // "species"
 */
export function plural(noun: string): string {
  if (UNCHANGED.test(noun)) return noun;
  if (/(?:larva|pupa|exuvia)$/i.test(noun)) return `${noun}e`;
  if (/[^aeiou]y$/i.test(noun)) return `${noun.slice(0, -1)}ies`;
  if (/(?:s|x|z|ch|sh)$/i.test(noun)) return `${noun}es`;
  return `${noun}s`;
}

/**
 * A number with its English noun, in the singular for one. Sentences of the catalogue count by plural forms instead.
 *
 * @param many the plural, where it is not regular
 * @example counted(1, "visit") // "1 visit"
 * @example counted(1379, "10 km square") // "1,379 10 km squares"
 */
export function counted(number: number, one: string, many: string = plural(one)): string {
  return `${grouped(number)} ${number === 1 ? one : many}`;
}

/**
 * The same with the number in words up to twelve.
 *
 * @example countedInWords(3, "species") // "three species"
 */
export function countedInWords(number: number, one: string, many: string = plural(one)): string {
  return `${inWords(number)} ${number === 1 ? one : many}`;
}

const lists = new Map<string, Intl.ListFormat>();

/**
 * A list in one line, as the page's language lists: in English commas, and "and" before the last.
 *
 * @example listed(["queen", "worker", "male"]) // "queen, worker and male"
 */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join("");
  const tag = language();
  const known = lists.get(tag) ?? new Intl.ListFormat(tag, { type: "conjunction" });
  lists.set(tag, known);
  return known.format(words);
}

/** First letter made large. @example capital("three species") // "Three species" */
export function capital(text: string): string {
  const at = marksBefore(text);
  return text.slice(0, at) + text.charAt(at).toUpperCase() + text.slice(at + 1);
}

/** First letter made small, unless the word is a code or in capitals. @example small("Queen") // "queen" */
export function small(text: string): string {
  const at = marksBefore(text);
  const words = text.slice(at);
  return /^\p{Lu}[\p{Lu}\d]/u.test(words) ? text : text.slice(0, at) + words.charAt(0).toLowerCase() + words.slice(1);
}
