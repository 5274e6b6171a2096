import type { SquareState } from "../../../publishing/contracts.ts";

const SHOWN: Readonly<Record<SquareState, string>> = {
  retained: "found in both",
  gained: "newly found",
  lost: "not refound",
  not_comparable_since: "cannot be compared",
  not_comparable_before: "cannot be compared",
  recorded: "recorded",
};

/** The words shown for a state of a square. @example stateWords("lost") // "not refound" */
export function stateWords(state: SquareState): string {
  return SHOWN[state];
}
