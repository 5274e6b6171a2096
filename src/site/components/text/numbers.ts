import { language, say } from "../../words/say.ts";

export { grouped, signed } from "./grouped.ts";

/** Fewest things of which the atlas gives a percentage. */
export const FEWEST_FOR_PERCENT = 20;

/**
 * A share as a whole percentage, or undefined for fewer than 20 things: a percentage of few misleads.
 *
 * @param part how many of the whole
 * @param whole how many in all
 * @example percentage(15, 19) // undefined
 * @example percentage(15, 20) // "75 %"
 */
export function percentage(part: number, whole: number): string | undefined {
  if (whole < FEWEST_FOR_PERCENT) return undefined;
  const rounded = Math.round((100 * part) / whole);
  if (rounded === 0 && part > 0) return say("text.percent-under", { number: 1 });
  if (rounded === 100 && part < whole) return say("text.percent-over", { number: 99 });
  return say("text.percent", { number: rounded });
}

/**
 * A number in words up to twelve, in figures above. In languages whose numbers agree with a noun the message of the
 * sentence says the small ones itself.
 *
 * @example inWords(3) // "three"
 */
export function inWords(number: number): string {
  return say("text.number", { n: number });
}

const decimals = new Map<string, Intl.NumberFormat>();

/**
 * A number with one figure after the decimal sign.
 *
 * @example oneDecimal(1.44) // "1.4", and "1,4" in French
 */
export function oneDecimal(number: number): string {
  const tag = language();
  const known = decimals.get(tag);
  if (known !== undefined) return known.format(number);
  const made = new Intl.NumberFormat(tag, { minimumFractionDigits: 1, maximumFractionDigits: 1 });
  decimals.set(tag, made);
  return made.format(number);
}

/**
 * A file's size for people; a kB is 1,000 bytes.
 *
 * @param bytes size in bytes
 * @example fileSize(41_300) // "41 kB"
 */
export function fileSize(bytes: number): string {
  if (bytes < 1_000) return say("text.bytes", { n: bytes });
  if (bytes < 999_500) return say("text.kilobytes", { number: Math.round(bytes / 1_000) });
  return say("text.megabytes", { number: oneDecimal(bytes / 1_000_000) });
}

/**
 * A sentence whose numbers stay on one line with their unit.
 *
 * @example unbroken("95 % interval") // "95\u00a0% interval"
 */
export function unbroken(sentence: string): string {
  return sentence.replace(/(\d) (?=%|k?m\b)/g, "$1\u00a0");
}
