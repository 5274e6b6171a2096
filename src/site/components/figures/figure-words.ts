import { language, say } from "../../words/say.ts";

/**
 * A number with a true minus, and its sign where asked.
 *
 * @param decimals digits after the point, 0 to 3
 * @param sign whether a number above 0 has a plus; a number that rounds to 0 has no sign
 * @example figured(-12.34, 1) // => "−12.3"
 */
export function figured(number: number, decimals = 0, sign = false): string {
  const text = Math.abs(number)
    .toLocaleString(language(), { minimumFractionDigits: decimals, maximumFractionDigits: decimals })
    .replaceAll("\u202f", "\u00a0");
  if (!/[1-9]/.test(text)) return text;
  return `${number < 0 ? "−" : sign ? "+" : ""}${text}`;
}

/**
 * A change with its sign and without its unit.
 *
 * @example change(12.34) // => "+12"
 */
export function change(number: number, decimals = 0): string {
  return figured(number, decimals, true);
}

/**
 * An interval in words, by the words of its ends; empty where it has none.
 *
 * @param words how one end is written
 * @example interval(-3.2, 8.1, (end) => change(end)) // => "−3 to +8"
 */
export function interval(low: number | null, high: number | null, words: (end: number) => string): string {
  return low === null || high === null ? "" : say("lines.from-to", { low: words(low), high: words(high) });
}

/** Clauses in one line, parted by semicolons. @example inClauses(["one", "two"]) // => "one; two" */
export function inClauses(clauses: readonly string[]): string {
  return clauses.reduce((rest, next) => (rest === "" ? next : say("lines.clauses", { rest, next })), "");
}

/** A number in words as a percentage, on one line with its sign. @example percent("+12") // => "+12\u00a0%" */
export function percent(number: string): string {
  return `${number}\u00a0%`;
}

/** A number in words of standard deviations, on one line with them. @example deviations("−1.3") // => "−1.3\u00a0SD" */
export function deviations(number: string): string {
  return `${number}\u00a0${say("lines.deviation")}`;
}
