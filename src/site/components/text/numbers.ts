const grouping = new Intl.NumberFormat("en-GB");

/**
 * A whole number with a comma at each thousand and a true minus.
 *
 * @example grouped(-1379) // "−1,379"
 */
export function grouped(number: number): string {
  return grouping.format(number).replace("-", "−");
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
  if (rounded === 0 && part > 0) return "under 1 %";
  if (rounded === 100 && part < whole) return "over 99 %";
  return `${rounded} %`;
}

const WORDS = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

/**
 * A number in words up to twelve, in figures above.
 *
 * @example inWords(3) // "three"
 */
export function inWords(number: number): string {
  return WORDS[number] ?? grouped(number);
}

/**
 * A file's size for people; a kB is 1,000 bytes.
 *
 * @param bytes size in bytes
 * @example fileSize(41_300) // "41 kB"
 */
export function fileSize(bytes: number): string {
  if (bytes < 1_000) return `${bytes} bytes`;
  if (bytes < 999_500) return `${Math.round(bytes / 1_000)} kB`;
  return `${(bytes / 1_000_000).toFixed(1)} MB`;
}

/**
 * A sentence whose numbers stay on one line with their unit.
 *
 * @example unbroken("95 % interval") // "95\u00a0% interval"
 */
export function unbroken(sentence: string): string {
  return sentence.replace(/(\d) (?=%|k?m\b)/g, "$1\u00a0");
}
