import type { ChangeRow } from "../../../publishing/contracts.ts";
import { grouped } from "../text/numbers.ts";
import type { Sentence } from "../text/sentences.ts";
import { counted } from "../text/words.ts";

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
  const start = `**${grouped(both)} of ${counted(all, "square")}** ${both === 1 ? "is" : "are"} covered in both periods by records of others: only ${both === 1 ? "this" : "these"} can show a change.`;
  const more = outside + unsettled;
  if (more === 0) return start;
  const why = [
    outside > 0 ? "too little else was recorded there" : "",
    unsettled > 0 ? "one period has only records of provisional years or of animals not established" : "",
  ].filter(Boolean);
  return `${start} ${counted(more, "more square")} ${more === 1 ? "holds" : "hold"} it in both, outside these figures: ${why.join(", or ")}.`;
}
