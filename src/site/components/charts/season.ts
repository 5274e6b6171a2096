/** Fewest dated records of which a season is given; under that first and last dates grow with the number of records. */
export const FEWEST_FOR_SEASON = 30;

/** One stroke of a season: positions in thirds of a month from the start of the year, 0 to 36. */
export interface Stroke {
  readonly from: number;
  readonly to: number;
}

/** What a season strip shows: dates by which 10 %, half and 90 % of the records had been made, and the middle halves. */
export interface Season {
  readonly thin: Stroke;
  readonly thick: readonly Stroke[];
  readonly median: number;
}

/**
 * Where a share of counted records is reached, records of one third taken as spread evenly over it.
 *
 * @param counts records by third of the month
 * @param share from 0 to 1
 * @returns position from 0 to the number of counts; NaN without records
 * @example quantile([0, 10, 10, 0], 0.5) // 2
 */
export function quantile(counts: readonly number[], share: number): number {
  const all = counts.reduce((sum, count) => sum + count, 0);
  if (all === 0) return Number.NaN;
  let before = 0;
  for (const [index, count] of counts.entries()) {
    if (count > 0 && before + count >= share * all) return index + (share * all - before) / count;
    before += count;
  }
  return counts.length;
}

/**
 * The third of a month in which a share of the records is reached.
 *
 * @returns index from 0; −1 without records
 * @example quantileThird([0, 10, 10, 0], 0.1) // 1
 */
export function quantileThird(counts: readonly number[], share: number): number {
  const position = quantile(counts, share);
  return Number.isNaN(position) ? -1 : Math.max(0, Math.ceil(position) - 1);
}

/**
 * The season of a strip: a thin stroke from the 10 % to the 90 % date, a thick one over the middle half.
 * Two broods give two thick strokes: a valley under 40 % of both peaks, with 15 % of the records on either side.
 *
 * @param counts records by third of the month, 36 numbers
 * @returns undefined under 30 records
 * @example season(counts)?.thin // { from: 7.2, to: 28.4 }
 */
export function season(counts: readonly number[]): Season | undefined {
  if (counts.reduce((sum, count) => sum + count, 0) < FEWEST_FOR_SEASON) return undefined;
  const valley = valleyOf(counts);
  const parts =
    valley === undefined
      ? [counts]
      : [
          counts.map((count, third) => (third < valley ? count : 0)),
          counts.map((count, third) => (third < valley ? 0 : count)),
        ];
  return {
    thin: { from: quantile(counts, 0.1), to: quantile(counts, 0.9) },
    thick: parts.map((part) => ({ from: quantile(part, 0.25), to: quantile(part, 0.75) })),
    median: quantile(counts, 0.5),
  };
}

/** The third at which two broods part, where there are two. Counts are smoothed over three thirds first. */
function valleyOf(counts: readonly number[]): number | undefined {
  const smooth = counts.map((count, third) => ((counts[third - 1] ?? 0) + count + (counts[third + 1] ?? 0)) / 3);
  const all = smooth.reduce((sum, count) => sum + count, 0);
  let best: number | undefined;
  for (const [third, height] of smooth.entries()) {
    const left = smooth.slice(0, third);
    const right = smooth.slice(third + 1);
    const deep = height < 0.4 * Math.min(Math.max(0, ...left), Math.max(0, ...right));
    const shares = [left, right].map((side) => side.reduce((sum, count) => sum + count, 0) / all);
    if (
      deep &&
      shares.every((share) => share >= 0.15) &&
      height < (best === undefined ? Infinity : (smooth[best] ?? 0))
    )
      best = third;
  }
  return best;
}

/**
 * Rows of a chart of the season whose share of the year can be drawn on one scale. One record is all of its year, and
 * would flatten the bars of every other row; where all rows are of few records, all are drawn.
 *
 * @param rows castes with their totals
 * @returns rows to draw, and rows of fewer than 30 records to name only; rows without records in neither
 * @example drawnRows([{ total: 1200 }, { total: 1 }]) // { shown: [{ total: 1200 }], few: [{ total: 1 }] }
 */
export function drawnRows<T extends { readonly total: number }>(rows: readonly T[]): { shown: T[]; few: T[] } {
  const some = rows.filter(({ total }) => total > 0);
  const shown = some.filter(({ total }) => total >= FEWEST_FOR_SEASON);
  if (shown.length === 0) return { shown: some, few: [] };
  return { shown, few: some.filter(({ total }) => total < FEWEST_FOR_SEASON) };
}
