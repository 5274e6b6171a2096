import { isSegment } from "./leaders.ts";
import type { PartState } from "./part-state.ts";

/**
 * The class of a ribbon's cell: filled with its colour, or plain where a word, a ring or a drawing stands in it.
 *
 * @param part id of the row
 * @param segments whether the plan draws each numbered segment in its cell
 * @example cellClass({ words: "red", piles: ["red"], mark: undefined, absent: false }, "T4", false) // "pile-red"
 */
export function cellClass(state: PartState | undefined, part: string, segments: boolean): string {
  const [one, two] = state?.piles ?? [];
  if (two !== undefined) return "two-piles";
  const isDrawn = state?.mark !== undefined || (segments && isSegment(part));
  return one === undefined || one === "clear" || isDrawn ? "plain" : `pile-${one}`;
}
