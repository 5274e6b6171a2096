import type { FigureRow } from "./figure-row.ts";
import { interval } from "./figure-words.ts";
import { type Line, lineNumber, numbersOf, saysOf } from "./lines.ts";

/**
 * A line as a row of a table of figures: estimate and interval in its unit, the numbers of each period and of both.
 *
 * @param name what the row is, for the table it stands in
 * @example trendRow("Squares compared", line).estimate // "+14 %"
 */
export function trendRow(name: string, line: Line): FigureRow {
  const { trend, unit } = line;
  const { estimate, low, high } = trend;
  const counts = numbersOf(line);
  if (!trend.judged || estimate === null)
    return { name, estimate: "", interval: "", reason: trend.reason || "no figure", counts, says: "" };
  return {
    name,
    estimate: `${lineNumber(unit, estimate)}${unit === "%" ? "\u00a0%" : "\u00a0SD"}`,
    interval: interval(low, high, (end) => lineNumber(unit, end)),
    reason: "",
    counts,
    says: saysOf(line),
  };
}
