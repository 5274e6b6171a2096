import type { ComparedSquares } from "../net-change.ts";

/** What is known of a taxon where its change is to be judged. */
export interface Comparison extends ComparedSquares {
  /** Squares with any record of it in each period, comparable or not. */
  squares_from: number;
  squares_to: number;
}

/**
 * Why the change of a taxon in compared squares is not judged, in words that end a sentence after a colon.
 *
 * @param minimum comparable squares asked for
 * @returns empty where it is judged
 * @example whyNotJudged({ retained: 9, gained: 4, lost: 6, squares_from: 15, squares_to: 13 }, 20) // => "19 comparable squares; 20 are needed"
 */
export function whyNotJudged(
  { retained, gained, lost, squares_from, squares_to }: Comparison,
  minimum: number,
): string {
  const comparable = retained + gained + lost;
  if (squares_from === 0)
    return squares_to === 0 ? "no square in either period" : "it is a newcomer: no square in the earlier period";
  if (comparable === 0) return "no comparable squares";
  if (retained + lost === 0) return "not recorded in the earlier period in any comparable square";
  if (comparable < minimum)
    return `${comparable} comparable ${comparable === 1 ? "square" : "squares"}; ${minimum} are needed`;
  return "";
}
