import { grouped, inWords } from "./numbers.ts";

const UNCHANGED = /(?:species|series|sheep|deer|fish|larvae|pupae|exuviae)$/i;

/**
 * The plural of an English noun by the regular rules, and of the few words of the trade that have none.
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
 * A number with its noun, in the singular for one.
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

/**
 * A list in one line: commas, and "and" before the last.
 *
 * @example listed(["queen", "worker", "male"]) // "queen, worker and male"
 */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} and ${words.at(-1) ?? ""}`;
}

/** First letter made large. @example capital("three species") // "Three species" */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** First letter made small, unless the word is a code or in capitals. @example small("Queen") // "queen" */
export function small(text: string): string {
  return /^\p{Lu}[\p{Lu}\d]/u.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);
}
