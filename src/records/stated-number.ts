/**
 * Reads a number as people write it in a cell: a leading +, spaces around, a decimal point, or a decimal comma
 * where there is no point. Anything else, thousands separators included, is not a number.
 *
 * @returns the number, or undefined
 * @example statedNumber(" 51,4778 ") // => 51.4778
 */
export function statedNumber(text: string): number | undefined {
  const plain = text.trim().replace("−", "-").replace(/^\+/, "");
  const pointed = plain.includes(".") ? plain : plain.replace(",", ".");
  return /^-?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/.test(pointed) ? Number(pointed) : undefined;
}
