/** What a spreadsheet takes for the beginning of a formula (OWASP, CSV injection), behind apostrophes that were there. */
const FORMULA = /^'*[=+\-@＝＋－＠]/;

/**
 * A cell that no spreadsheet runs: one apostrophe more before what begins like a formula. `withoutGuard` takes it away.
 *
 * @example guarded("=1+1") // => "'=1+1"
 */
export function guarded(text: string): string {
  return FORMULA.test(text) ? `'${text}` : text;
}

/**
 * What a cell of the file says, without the apostrophe `guarded` puts before a formula.
 *
 * @example withoutGuard("'=1+1") // => "=1+1"
 */
export function withoutGuard(cell: string): string {
  return cell.startsWith("'") && FORMULA.test(cell) ? cell.slice(1) : cell;
}
