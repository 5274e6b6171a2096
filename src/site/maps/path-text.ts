/**
 * One number of an SVG path or matrix, as short as it can be written.
 *
 * @param value any finite number
 * @param decimals most digits after the point
 * @returns the text, without a zero before the point or at the end
 * @example numberText(-0.5004, 2) // "-.5"
 */
export function numberText(value: number, decimals: number): string {
  const text = String(Number(value.toFixed(decimals)));
  if (text === "-0") return "0";
  return text.replace(/^(-?)0\./, "$1.");
}

/**
 * Numbers of a path one after another, with a space only where a reader of the path needs one.
 *
 * @param values finite numbers
 * @param decimals most digits after the point
 * @returns the text
 * @example numbersText([4, -0.5, 0.25], 2) // "4-.5.25"
 */
export function numbersText(values: readonly number[], decimals: number): string {
  let text = "";
  let previous = "";
  for (const value of values) {
    const next = numberText(value, decimals);
    const joins = text === "" || next.startsWith("-") || (next.startsWith(".") && previous.includes("."));
    text += joins ? next : ` ${next}`;
    previous = next;
  }
  return text;
}
