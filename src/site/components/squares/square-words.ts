import type { SquareFile, SquareState } from "../../../publishing/contracts.ts";
import { counted } from "../text/words.ts";

/**
 * Which tetrads of a hectad were visited, and which has the longest list.
 *
 * @example tetradSentence(square) // "21 of 25 tetrads visited. **F** has the longest list, nine species; **D, M** have never been visited."
 */
export function tetradSentence({ tetrads }: Pick<SquareFile, "tetrads">): string {
  const visited = tetrads.filter(({ visits, taxa }) => visits > 0 || taxa > 0);
  if (visited.length === 0) return "No record here is precise to 2 km.";
  const best = visited.reduce((one, other) => (other.taxa > one.taxa ? other : one));
  return `${visited.length} of 25 tetrads have records. **${best.letter}** has the longest list, ${counted(best.taxa, "species")}.`;
}

/** The states a square's list can hold, in the order of the key. */
const ORDER: readonly SquareState[] = ["retained", "gained", "lost", "not_comparable_since", "not_comparable_before"];

/**
 * How many taxa of a square are in each state, without the states that none is in.
 *
 * @example countStates([{ state: "lost" }, { state: "lost" }]) // [{ state: "lost", number: 2 }]
 */
export function countStates(
  taxa: readonly { readonly state: SquareState }[],
): { state: SquareState; number: number }[] {
  return ORDER.flatMap((state) => {
    const number = taxa.filter((taxon) => taxon.state === state).length;
    return number === 0 ? [] : [{ state, number }];
  });
}

/**
 * A coordinate in degrees with its hemisphere, two decimals.
 *
 * @param degrees positive to the north or east
 * @param signs letters for positive and negative
 * @example degreesOf(-1.613, "EW") // "1.61° W"
 */
export function degreesOf(degrees: number, signs: "NS" | "EW"): string {
  return `${Math.abs(degrees).toFixed(2)}° ${signs.charAt(degrees < 0 ? 1 : 0)}`;
}
