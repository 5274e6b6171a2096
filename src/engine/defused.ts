/** What a spreadsheet takes for the beginning of a formula (OWASP, CSV injection); full-width signs among them. */
const FORMULA_SIGNS = "'=+-@＝＋－＠' || chr(9) || chr(10) || chr(13)";

/** SQL expression of a text that no spreadsheet runs: one that begins like a formula gets an apostrophe. */
export function defused(text: string): string {
  return `CASE WHEN ${text} <> '' AND contains(${FORMULA_SIGNS}, (${text})[1]) THEN '''' || ${text} ELSE ${text} END`;
}
