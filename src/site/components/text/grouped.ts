import { language } from "../../words/language.ts";
import { numberText } from "../../words/number-format.ts";

/**
 * A whole number grouped as the page's language does, with a true minus. Runs in the browser too.
 *
 * @example grouped(-1379) // "−1,379"
 */
export function grouped(number: number): string {
  return numberText(language()).format(number);
}

/**
 * A change with its sign; no change has none.
 *
 * @param number a difference, in any unit
 * @example signed(99) // "+99"
 */
export function signed(number: number): string {
  return number > 0 ? `+${grouped(number)}` : grouped(number);
}
