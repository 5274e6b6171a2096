import type { Outcomes } from "../statistics/logistic.ts";
import type { CompleteLists, OnLists } from "./reporting-rate-lists.ts";

/** The lists by which a taxon's rate is compared, and how many there are at each time. */
export interface ComparedLists {
  readonly outcomes: Outcomes;
  /** Lists, those that name the taxon, and 10 km squares with lists, by time. */
  readonly lists: readonly number[];
  readonly found: readonly number[];
  readonly squares: readonly number[];
  /** 10 km squares in all. */
  readonly allSquares: number;
}

/** Sines and cosines of the year and half year by day of the year. */
const SEASON = [1, 2].flatMap((waves) =>
  [Math.sin, Math.cos].map((wave) =>
    Float64Array.from({ length: 367 }, (_, day) => wave((2 * Math.PI * waves * day) / 365.25)),
  ),
);

/**
 * Lays out the lists that tell of one taxon. Only squares that ever held it count, and only lists that would be among the
 * lists without it too: a list that names nothing else would not be there had it not been found, so that it says nothing
 * of how often it is.
 *
 * @param timeOf number of the time that a list belongs to, from 0, or −1 for none
 * @param times how many times there are
 * @param inAll whether only squares with lists at every time count
 * @example comparedLists(lists, own, (list) => lists.period[list], 2, true).lists // => [1410, 2288]
 */
export function comparedLists(
  all: CompleteLists,
  own: OnLists,
  timeOf: (list: number) => number,
  times: number,
  inAll: boolean,
): ComparedLists {
  const others = all.length.slice();
  const found = new Uint8Array(others.length);
  own.lists.forEach((list, index) => {
    others[list] = own.others[index] as number;
    found[list] = own.found[index] ? 1 : 0;
  });
  const fits = (list: number) =>
    timeOf(list) >= 0 && (others[list] as number) >= all.shortest && own.squares.has(all.square[list] as number);
  const chosen = inSquares(all.square, fits, timeOf, inAll ? times : 1);
  const level = Int32Array.from(chosen, timeOf);
  const square = Int32Array.from(chosen, (list) => all.square[list] as number);
  const stratum = numberedFromZero(square);
  const count = (isCounted: (index: number) => boolean) => {
    const counts = new Array<number>(times).fill(0);
    level.forEach((time, index) => {
      if (isCounted(index)) counts[time] = (counts[time] as number) + 1;
    });
    return counts;
  };
  const seen = new Set<number>();
  const isNew = (key: number) => !seen.has(key) && seen.add(key) !== undefined;
  return {
    outcomes: {
      successes: Float64Array.from(chosen, (list) => found[list] as number),
      trials: new Float64Array(chosen.length).fill(1),
      level,
      levels: times,
      covariates: [
        Float64Array.from(chosen, (list) => Math.log(others[list] as number)),
        ...SEASON.map((wave) => Float64Array.from(chosen, (list) => wave[all.dayOfYear[list] as number] as number)),
      ],
      stratum,
    },
    lists: count(() => true),
    found: count((index) => found[chosen[index] as number] === 1),
    squares: count((index) => isNew((stratum[index] as number) * times + (level[index] as number))),
    allSquares: chosen.length === 0 ? 0 : (stratum.at(-1) as number) + 1,
  };
}

/** Lists that fit, of squares that have some at as many times as asked for; in order. */
function inSquares(
  square: Int32Array,
  fits: (list: number) => boolean,
  timeOf: (list: number) => number,
  fewestTimes: number,
): number[] {
  const chosen: number[] = [];
  let ofSquare: number[] = [];
  square.forEach((number, list) => {
    if (fits(list)) ofSquare.push(list);
    if (square[list + 1] === number) return;
    if (ofSquare.length > 0 && new Set(ofSquare.map(timeOf)).size >= fewestTimes) chosen.push(...ofSquare);
    ofSquare = [];
  });
  return chosen;
}

/** Numbers that never fall, counted anew from 0. */
function numberedFromZero(numbers: Int32Array): Int32Array {
  let last = -1;
  return numbers.map((number, index) => {
    if (index === 0 || number !== numbers[index - 1]) last += 1;
    return last;
  });
}
