/** Bars leave this much of their column free at the left, and are this wide; columns are 1 wide. */
const [LEFT, WIDTH] = [".15", ".7"];

/**
 * Path data of bars that stand on a base line, one a column. Each begins relative to the one before, so that a page of
 * many bars repeats itself and packs small.
 *
 * @param tops of each column in units of the drawing, as text; undefined for a column without a bar
 * @param base of all bars
 * @returns empty without bars
 * @example barPath(["4", undefined, "76"], 100) // "M0.15 100V4h.7V100zm2 0V76h.7V100z"
 */
export function barPath(tops: readonly (string | undefined)[], base: number): string {
  let last: number | undefined;
  let path = "";
  for (const [column, top] of tops.entries()) {
    if (top === undefined) continue;
    path += last === undefined ? `M${column}${LEFT} ${base}` : `m${column - last} 0`;
    path += `V${top}h${WIDTH}V${base}z`;
    last = column;
  }
  return path;
}

/**
 * Path data of a step over columns 1 wide, from its first height on, without where it begins.
 *
 * @param heights of the columns, as text
 * @example stepPath(["100", "4"]) // "V100h1V4h1"
 */
export function stepPath(heights: readonly string[]): string {
  return heights.map((height) => `V${height}h1`).join("");
}
