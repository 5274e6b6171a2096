import type { AtlasFile, Period, TaxonFile, TaxonSquare } from "../../../publishing/contracts.ts";

/** What the large map shows of time: two periods compared, one period, or every date. */
export interface Time {
  readonly kind: "compared" | "period" | "all";
  /** Place of the period in the atlas's order; -1 where it is not one period. */
  readonly index: number;
  readonly label: string;
}

/** What {@link sortSquares} needs of an atlas and a taxon. */
export interface Shown {
  readonly atlas: Pick<AtlasFile, "periods" | "compared">;
  readonly taxon: Pick<TaxonFile, "squares" | "uncovered" | "change">;
}

/**
 * The times a reader may choose: the comparison first where there is one, each period, then every date.
 *
 * @param atlas its periods, and which are compared
 * @param words of the comparison and of every date
 * @example timesOf(atlas, { compared: "Compared", all: "All dates" }).map(({ label }) => label) // ["Compared", "1990–2005", "2006–2024", "All dates"]
 */
export function timesOf(
  { periods, compared }: Pick<AtlasFile, "periods" | "compared">,
  words: { compared: string; all: string },
): Time[] {
  return [
    ...(compared === null ? [] : [{ kind: "compared", index: -1, label: words.compared } as const]),
    ...periods.map(({ label }, index): Time => ({ kind: "period", index, label })),
    { kind: "all", index: -1, label: words.all },
  ];
}

/**
 * An atlas and a taxon as they would be if a time were all there is, for the squares of some places only. Of one period
 * only its records count, and what it did not cover is hatched; of every date, what no compared period covered.
 *
 * @param atlas the whole atlas
 * @param taxon the whole taxon
 * @param time what is shown of time
 * @param isHere which squares of 10 km count; squares of 2 km are all kept
 * @example atTime(atlas, taxon, times[1], () => true).atlas.compared // null
 */
export function atTime(
  atlas: Pick<AtlasFile, "periods" | "compared">,
  taxon: Shown["taxon"],
  time: Time,
  isHere: (code: string) => boolean,
): Shown {
  const uncovered = {
    neither: taxon.uncovered.neither.filter(isHere),
    later_only: taxon.uncovered.later_only.filter(isHere),
    earlier_only: taxon.uncovered.earlier_only.filter(isHere),
  };
  const hectads = taxon.squares["10000"].filter(({ square }) => isHere(square));
  const squares = { "10000": hectads, "2000": taxon.squares["2000"] };
  if (time.kind === "compared") return { atlas, taxon: { ...taxon, squares, uncovered } };
  const period: Period = atlas.periods[time.index] ?? { id: "all", label: time.label, from: null, to: 0 };
  const alone = { periods: [{ ...period, label: time.label }], compared: null };
  if (time.kind === "all") {
    const own = { "10000": hectads.map(recordedOnce), "2000": squares["2000"].map(recordedOnce) };
    return { atlas: alone, taxon: { change: [], squares: own, uncovered: onlyNeither(uncovered.neither) } };
  }
  const inPeriod = (square: TaxonSquare) => (square.records[time.index] ?? 0) > 0;
  const without = hectads.filter((square) => !inPeriod(square) && square.covered[time.index] === false);
  const own = {
    "10000": hectads.filter(inPeriod).map(recordedOnce),
    "2000": squares["2000"].filter(inPeriod).map(recordedOnce),
  };
  const blank = uncoveredIn(atlas, uncovered, time.index);
  return {
    atlas: alone,
    taxon: { change: [], squares: own, uncovered: onlyNeither([...blank, ...without.map(({ square }) => square)]) },
  };
}

/** Squares without any record that a period did not cover. Those of periods that are not compared are not known, and not hatched. */
function uncoveredIn(
  { periods, compared }: Pick<AtlasFile, "periods" | "compared">,
  { neither, later_only, earlier_only }: Shown["taxon"]["uncovered"],
  index: number,
): string[] {
  const id = periods[index]?.id;
  if (compared === null) return index === periods.length - 1 ? [...neither] : [];
  if (id === compared[0]) return [...neither, ...later_only];
  return id === compared[1] ? [...neither, ...earlier_only] : [];
}

function onlyNeither(neither: readonly string[]): Shown["taxon"]["uncovered"] {
  return { neither: [...neither], later_only: [], earlier_only: [] };
}

function recordedOnce(square: TaxonSquare): TaxonSquare {
  return { ...square, state: "recorded", records: [1] };
}
