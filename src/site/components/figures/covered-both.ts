import type { ChangeRow } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { grouped } from "../text/numbers.ts";
import type { Sentence } from "../text/sentences.ts";

type Counts = Pick<
  ChangeRow,
  | "comparable"
  | "recorded_both_not_covered"
  | "recorded_both_unsettled"
  | "not_comparable_since"
  | "not_comparable_before"
  | "covered_both_no_record"
  | "covered_one_no_record"
  | "covered_neither"
>;

/**
 * On how much of the ground change can be seen at all: squares covered in both periods by records of others, with the
 * squares that hold the taxon in both and miss the rule.
 *
 * @example coveredBoth(row) // "**1,585 of 3,272 squares** are covered in both periods by records of others: only these can show a change. …"
 */
export function coveredBoth(row: Counts): Sentence {
  const both = row.comparable + row.covered_both_no_record;
  const outside = row.recorded_both_not_covered;
  const unsettled = row.recorded_both_unsettled;
  const all =
    both +
    outside +
    unsettled +
    row.not_comparable_since +
    row.not_comparable_before +
    row.covered_one_no_record +
    row.covered_neither;
  const start = say("lines.covered", { n: both, both: grouped(both), all });
  const more = outside + unsettled;
  if (more === 0) return start;
  const [one = "", other] = [
    outside > 0 ? say("lines.outside-uncovered") : "",
    unsettled > 0 ? say("lines.outside-unsettled") : "",
  ].filter(Boolean);
  const why = other === undefined ? one : say("lines.outside-either", { one, other });
  return `${start} ${say("lines.outside", { n: more, why })}`;
}
