/**
 * A number with a true minus, and its sign where asked.
 *
 * @param decimals digits after the point, 0 to 3
 * @param sign whether a number above 0 has a plus; a number that rounds to 0 has no sign
 * @example figured(-12.34, 1) // => "−12.3"
 */
export function figured(number: number, decimals = 0, sign = false): string {
  const text = Math.abs(number).toLocaleString("en-GB", {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  });
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
  return low === null || high === null ? "" : `${words(low)} to ${words(high)}`;
}
