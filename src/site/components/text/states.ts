import type { SquareState } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";

/** The words shown for a state of a square. @example stateWords("lost") // "not refound" */
export function stateWords(state: SquareState): string {
  return say(`text.state-${state}`);
}
