/**
 * The 10 km square a written grid reference lies in, by its text alone: the figures are cut, never rounded.
 * Whether such a square exists is not asked.
 *
 * @param text a reference of a lettered grid to 10 km or finer, a tetrad or quarter, or a cell of a metric grid
 * @returns the square's code, or undefined for a text that is no such reference
 * @example hectadOfReference("nz 2574 6412") // "NZ26"
 * @example hectadOfReference("NZ27F") // "NZ27"
 * @example hectadOfReference("10kmE398N302") // "10kmE398N302"
 */
export function hectadOfReference(text: string): string | undefined {
  const packed = text.replace(/[\s,]/g, "");
  if (/^10kmE\d{3}N\d{3}$/i.test(packed)) return `10km${packed.slice(4).toUpperCase()}`;
  const [, letters, figures] = packed.toUpperCase().match(/^([A-HJ-Z]{1,2})(\d{2,10})(?:[A-NP-Z]|NE|NW|SE|SW)?$/) ?? [];
  if (letters === undefined || figures === undefined || figures.length % 2 !== 0) return undefined;
  return `${letters}${figures.charAt(0)}${figures.charAt(figures.length / 2)}`;
}
