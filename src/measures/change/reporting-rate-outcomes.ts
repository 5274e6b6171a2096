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
 * @param timeOf number of the time that each list belongs to, from 0, or −1 for none
 * @param times how many times there are
 * @param inAll whether only squares with lists at every time count
 * @example comparedLists(lists, own, lists.period, 2, true).lists // => [1410, 2288]
 */
export function comparedLists(
  all: CompleteLists,
  own: OnLists,
  timeOf: Int32Array,
  times: number,
  inAll: boolean,
): ComparedLists {
  const others = all.length.slice();
  const found = new Uint8Array(others.length);
  own.lists.forEach((list, index) => {
    others[list] = own.others[index] as number;
    found[list] = own.found[index] ? 1 : 0;
  });
  const fits = (list: number) => (timeOf[list] as number) >= 0 && (others[list] as number) >= all.shortest;
  const tally = tallyOf(times);
  const chosen = new Int32Array(others.length);
  const stratum = new Int32Array(others.length);
  let size = 0;
  for (const [from, past] of rangesOf(all.square, own.squares)) {
    const before = size;
    tally.begin();
    for (let list = from; list < past; list += 1) {
      if (!fits(list)) continue;
      stratum[size] = tally.squares();
      chosen[size] = list;
      size += 1;
      tally.add(timeOf[list] as number, found[list] as number);
    }
    if (!tally.end(inAll ? times : 1)) size = before;
  }
  return {
    outcomes: outcomesOf(all, chosen.subarray(0, size), { others, found, timeOf, times, stratum }),
    ...tally.counts(),
  };
}

/** Covariates and outcome of the chosen lists. */
function outcomesOf(
  { dayOfYear }: CompleteLists,
  chosen: Int32Array,
  of: { others: Int32Array; found: Uint8Array; timeOf: Int32Array; times: number; stratum: Int32Array },
): Outcomes {
  const each = (read: (list: number) => number) => {
    const values = new Float64Array(chosen.length);
    for (let index = 0; index < values.length; index += 1) values[index] = read(chosen[index] as number);
    return values;
  };
  return {
    successes: each((list) => of.found[list] as number),
    trials: new Float64Array(chosen.length).fill(1),
    level: chosen.map((list) => of.timeOf[list] as number),
    levels: of.times,
    covariates: [
      each((list) => Math.log(of.others[list] as number)),
      ...SEASON.map((wave) => each((list) => wave[dayOfYear[list] as number] as number)),
    ],
    stratum: of.stratum.subarray(0, chosen.length),
  };
}

/** First list of each square of a taxon, and the one after its last. */
function* rangesOf(square: Int32Array, squares: ReadonlySet<number>): Generator<[from: number, past: number]> {
  for (let from = 0; from < square.length; ) {
    let past = from + 1;
    while (past < square.length && square[past] === square[from]) past += 1;
    if (squares.has(square[from] as number)) yield [from, past];
    from = past;
  }
}

/** Counts lists, finds and squares by time, square by square; those of a square count only if it has lists at enough times. */
function tallyOf(times: number) {
  const zeros = () => new Array<number>(times).fill(0);
  const [lists, found, squares] = [zeros(), zeros(), zeros()];
  const [ownLists, ownFound] = [zeros(), zeros()];
  let allSquares = 0;
  const addTo = (sums: number[], time: number, amount: number) => {
    sums[time] = (sums[time] as number) + amount;
  };
  return {
    squares: () => allSquares,
    begin: () => {
      ownLists.fill(0);
      ownFound.fill(0);
    },
    add: (time: number, finds: number) => {
      addTo(ownLists, time, 1);
      addTo(ownFound, time, finds);
    },
    end: (fewestTimes: number): boolean => {
      if (ownLists.filter((count) => count > 0).length < fewestTimes) return false;
      for (let time = 0; time < times; time += 1) {
        addTo(lists, time, ownLists[time] as number);
        addTo(found, time, ownFound[time] as number);
        addTo(squares, time, ownLists[time] === 0 ? 0 : 1);
      }
      allSquares += 1;
      return true;
    },
    counts: () => ({ lists, found, squares, allSquares }),
  };
}
