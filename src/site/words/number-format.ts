/** What formats whole numbers of one language; both messages and code ask it. */
export interface NumberText {
  format(number: number): string;
}

const made = new Map<string, NumberText>();

/**
 * Numbers grouped as a language does, with a true minus. Narrow no-break spaces become no-break spaces, which the
 * site's letters have.
 *
 * @param language BCP 47 tag
 * @example numberText("fr").format(-1379) // "−1\u00a0379"
 */
export function numberText(language: string): NumberText {
  const known = made.get(language);
  if (known !== undefined) return known;
  const format = new Intl.NumberFormat(language);
  const text = { format: (number: number) => format.format(number).replace("-", "−").replaceAll("\u202f", "\u00a0") };
  made.set(language, text);
  return text;
}
