import { say } from "../../words/say.ts";
import type { FigureRow } from "./figure-row.ts";
import { deviations, interval, percent } from "./figure-words.ts";
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
    return { name, estimate: "", interval: "", reason: trend.reason || say("lines.no-figure"), counts, says: "" };
  return {
    name,
    estimate: unit === "%" ? percent(lineNumber(unit, estimate)) : deviations(lineNumber(unit, estimate)),
    interval: interval(low, high, (end) => lineNumber(unit, end)),
    reason: "",
    counts,
    says: saysOf(line),
  };
}
