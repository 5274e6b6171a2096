/**
 * Reads a number as people write it in a cell: a leading +, spaces around, a decimal point, or a decimal comma
 * where there is no point. Anything else is not a number, and neither is one too large for a computer. "1,000" is 1 here:
 * where it may be a thousand, ask `mayBeThousands`.
 *
 * @returns the number, or undefined
 * @example statedNumber(" 51,4778 ") // => 51.4778
 */
export function statedNumber(text: string): number | undefined {
  const plain = text
    .trim()
    .replace(/^−/, "-")
    .replace(/^\+(?=[\d.,])/, "");
  const pointed = plain.includes(".") ? plain : plain.replace(",", ".");
  if (!/^-?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?$/.test(pointed)) return undefined;
  const number = Number(pointed);
  return Number.isFinite(number) ? number : undefined;
}

/**
 * Whether a comma in a whole number of metres may part thousands as well as decimals.
 *
 * @example mayBeThousands("423,000") // => true
 */
export function mayBeThousands(text: string): boolean {
  return /^[+]?[1-9]\d{0,2}(?:,\d{3})+$/.test(text.trim());
}
