import { exactInterval } from "./binomial.ts";

/** Squares compared: with the taxon in both periods, newly found, not refound. */
export interface ComparedSquares {
  retained: number;
  gained: number;
  lost: number;
}

/**
 * The 95 % interval of the net change in squares, gained minus lost, given how many squares changed at all: the exact
 * interval of the share gained among them (Clopper–Pearson), carried over to squares, and no lower than the loss of all
 * that were held. It leaves 0 out exactly where the exact test of McNemar is below 5 %. It speaks of chance among the
 * comparable squares only, not of recording effort within them. Where nothing changed it reaches as far as the exact upper
 * limit of none among those compared, n·(1 − 0.025^(1/n)) squares either way.
 *
 * @returns [low, high] in squares, not rounded; [0, 0] without a square compared
 * @example netChangeInterval({ retained: 40, gained: 25, lost: 12 }).map((end) => end.toFixed(3)) // => ["0.159", "23.670"]
 */
export function netChangeInterval({ retained, gained, lost }: ComparedSquares): [low: number, high: number] {
  const changed = gained + lost;
  if (changed === 0) {
    const reach = retained * exactInterval(0, retained)[1];
    return [-Math.min(reach, retained) + 0, reach];
  }
  const [low, high] = exactInterval(gained, changed);
  return [Math.max(-(retained + lost), changed * (2 * low - 1)) + 0, changed * (2 * high - 1) + 0];
}

/**
 * An interval in whole squares: rounded outwards, but for a limit on one side of 0, which stays there, so that the
 * rounded interval leaves 0 out where the exact one does.
 *
 * @example inWholeSquares([0.159, 23.67]) // => [1, 24]
 */
export function inWholeSquares([low, high]: readonly [number, number]): [low: number, high: number] {
  return [
    low > 0 ? Math.max(1, Math.floor(low)) : Math.floor(low) + 0,
    high < 0 ? Math.min(-1, Math.ceil(high)) : Math.ceil(high) + 0,
  ];
}

/**
 * Net change as a share of the squares that held the taxon in the earlier period, in %, with its interval.
 *
 * @returns null where none held it then
 * @example netPercent({ retained: 10, gained: 5, lost: 10 })?.estimate // => -25
 */
export function netPercent(squares: ComparedSquares): {
  estimate: number;
  low: number;
  high: number;
} | null {
  const { retained, gained, lost } = squares;
  const before = retained + lost;
  if (before === 0) return null;
  const [low, high] = netChangeInterval(squares);
  return { estimate: (100 * (gained - lost)) / before, low: (100 * low) / before, high: (100 * high) / before };
}

/**
 * Turnover: of the comparable squares that held the taxon in either period, the share that held it in one only,
 * (gained + lost) / (retained + gained + lost), in %, with its exact interval (Clopper–Pearson). Part of it is always
 * the taxon not being found where it was, so that it is an upper bound of the change on the ground.
 *
 * @returns null where no comparable square held it
 * @example turnoverPercent({ retained: 12, gained: 3, lost: 5 })?.estimate // => 40
 */
export function turnoverPercent({ retained, gained, lost }: ComparedSquares): {
  estimate: number;
  low: number;
  high: number;
} | null {
  const all = retained + gained + lost;
  if (all === 0) return null;
  const [low, high] = exactInterval(gained + lost, all);
  return { estimate: (100 * (gained + lost)) / all, low: 100 * low, high: 100 * high };
}
