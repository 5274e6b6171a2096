import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import type { AtlasFile, TaxonFile, TaxonSquare } from "./contracts.ts";
import { boundsOf, type MapGround, type MapSquare, writeSquareTiles } from "./square-tiles.ts";

/** Codes and middles of all squares of one size, in the order of their ids. */
export interface MapSquareList {
  /** Id of the first; the others follow without a gap. */
  readonly first: number;
  /** Codes, separated by spaces. */
  readonly codes: string;
  /** Middle of each square in thousandths of a degree, longitude then latitude, each as the difference from the square before. */
  readonly middles: readonly number[];
}

/** `map/visits.json`: how often each square was visited, in the order of ids. */
export interface MapVisits {
  /** One list a period. */
  readonly hectads: readonly (readonly number[])[];
  /** Of all dates. */
  readonly tetrads: readonly number[];
}

/** `map/map.json`: what the interactive map must know before it opens. */
export interface MapSettings {
  readonly bounds: readonly [west: number, south: number, east: number, north: number];
  readonly land: boolean;
  readonly periods: readonly { readonly label: string }[];
  /** Places of the compared periods in `periods`; null where the atlas compares nothing. */
  readonly compared: readonly [number, number] | null;
  readonly taxa: readonly { readonly slug: string; readonly name: string }[];
  readonly invented: boolean;
  readonly coverage_minimum_visits: number;
  readonly group: string;
}

/** Squares of one size of one taxon, as columns. */
export interface TaxonColumns {
  /** Ids in rising order, each as the difference from the one before. */
  readonly ids: readonly number[];
  /** One letter a square: r retained, g gained, l lost, s and b not comparable (since, before), o recorded. */
  readonly states: string;
  /** One number a square: bit i is set where period i is covered. */
  readonly covered: readonly number[];
  /** Records, one list a period. */
  readonly records: readonly (readonly number[])[];
}

/** `map/taxa/<slug>.json`: one taxon on the interactive map. */
export interface TaxonStates {
  readonly name: string;
  readonly hectads: TaxonColumns;
  readonly tetrads: TaxonColumns;
  /** Ids of hectads without a record that are not covered, as differences. */
  readonly uncovered: {
    readonly neither: readonly number[];
    readonly later_only: readonly number[];
    readonly earlier_only: readonly number[];
  };
  /** Whether change may be spoken of at 2 km. */
  readonly judged_at_2km: boolean;
  /** Whether its records are shown at 10 km on purpose: the map then keeps 10 km squares at every zoom. */
  readonly shown_at_10km: boolean;
}

const LETTERS: Readonly<Record<TaxonSquare["state"], string>> = Object.freeze({
  retained: "r",
  gained: "g",
  lost: "l",
  not_comparable_since: "s",
  not_comparable_before: "b",
  recorded: "o",
});

/**
 * Writes everything of the interactive map into a folder that is copied to the site's `/map/`:
 *
 *   squares.pmtiles     land and all squares as vector tiles
 *   hectads.json        codes and middles of the 10 km squares, by id
 *   tetrads.json        the same of the 2 km squares; fetched only when one is asked for
 *   map.json            bounds, periods, list of taxa
 *   visits.json         visits to each square; fetched only when they are asked for
 *   taxa/<slug>.json    states of one taxon's squares; none of a taxon whose places are withheld
 *
 * @param folder usually `map` of the published folder
 * @param squares every hectad and tetrad; ids count from 0, hectads first, without a gap
 * @param atlas the published atlas file
 * @param taxa the published taxa, one at a time
 * @param ground land (the detailed coast) and lakes
 * @param visits by square: of hectads one number a period, of tetrads one number; none where a square has no entry
 * @returns bytes of the tiles
 * @throws {Error} where ids leave a gap or hectads and tetrads are mixed
 * @example writeMapFolder("published/map", squares, atlas, taxa, { land })
 */
export function writeMapFolder(
  folder: string,
  squares: readonly MapSquare[],
  atlas: AtlasFile,
  taxa: Iterable<TaxonFile>,
  ground: MapGround = {},
  visits: ReadonlyMap<string, readonly number[]> = new Map(),
): number {
  mkdirSync(path.join(folder, "taxa"), { recursive: true });
  const write = (name: string, value: unknown) => writeFileSync(path.join(folder, name), `${JSON.stringify(value)}\n`);
  const mark = atlas.invented ? { invented: true } : {};
  write("hectads.json", { ...mark, ...squareList(squares, 10_000) });
  write("tetrads.json", { ...mark, ...squareList(squares, 2_000) });
  write("map.json", mapSettings(squares, atlas, ground));
  write("visits.json", { ...mark, ...mapVisits(squares, visits, atlas.periods.length) });
  const ids = new Map(squares.map(({ code, id }) => [code, id]));
  for (const taxon of taxa)
    if (taxon.generalised_to !== "withheld")
      write(path.join("taxa", `${taxon.slug}.json`), { ...mark, ...taxonStates(taxon, ids) });
  return writeSquareTiles(squares, path.join(folder, "squares.pmtiles"), ground);
}

/**
 * States of one taxon's squares as columns of numbers, small enough to fetch at each change of species.
 *
 * @param taxon the published taxon
 * @param ids id of each square by code
 * @example taxonStates(taxon, ids).hectads.states // "rrgls"
 */
export function taxonStates(
  taxon: Pick<TaxonFile, "vernacular_name" | "squares" | "uncovered" | "change" | "generalised_to">,
  ids: ReadonlyMap<string, number>,
): TaxonStates {
  const known = (codes: readonly string[]) =>
    differences(codes.flatMap((code) => ids.get(code) ?? []).toSorted((a, b) => a - b));
  const { neither, later_only, earlier_only } = taxon.uncovered;
  return {
    name: taxon.vernacular_name,
    hectads: columns(taxon.squares["10000"], ids),
    tetrads: columns(taxon.squares["2000"], ids),
    uncovered: { neither: known(neither), later_only: known(later_only), earlier_only: known(earlier_only) },
    judged_at_2km: taxon.change.find((row) => row.resolution_m === 2_000 && row.territory === "all")?.judged ?? false,
    shown_at_10km: taxon.generalised_to === "10 km",
  };
}

function columns(squares: readonly TaxonSquare[], ids: ReadonlyMap<string, number>): TaxonColumns {
  const rows = squares
    .flatMap((square) => {
      const id = ids.get(square.square);
      return id === undefined ? [] : [{ id, square }];
    })
    .toSorted((a, b) => a.id - b.id);
  const periods = rows[0]?.square.records.length ?? 0;
  return {
    ids: differences(rows.map(({ id }) => id)),
    states: rows.map(({ square }) => LETTERS[square.state]).join(""),
    covered: rows.map(({ square }) => square.covered.reduce((bits, yes, i) => bits + (yes ? 2 ** i : 0), 0)),
    records: Array.from({ length: periods }, (_, period) => rows.map(({ square }) => square.records[period] ?? 0)),
  };
}

function differences(numbers: readonly number[]): number[] {
  return numbers.map((number, i) => number - (numbers[i - 1] ?? 0));
}

/** Codes and middles of the squares of one size. @throws where their ids leave a gap */
export function squareList(squares: readonly MapSquare[], resolution: MapSquare["resolution_m"]): MapSquareList {
  const sorted = squares.filter(({ resolution_m }) => resolution_m === resolution).toSorted((a, b) => a.id - b.id);
  const first = sorted[0]?.id ?? 0;
  sorted.forEach(({ id, code }, i) => {
    if (id !== first + i)
      throw new Error(`square ${code} has id ${id} where ${first + i} was due: ids of one size must follow each other`);
  });
  const middles = [0, 1].map((axis) =>
    differences(
      sorted.map((square) =>
        Math.round(square.corners.slice(0, 4).reduce((sum, corner) => sum + (corner[axis] ?? 0), 0) * 250),
      ),
    ),
  );
  return {
    first,
    codes: sorted.map(({ code }) => code).join(" "),
    middles: sorted.flatMap((_, i) => middles.map((column) => column[i] ?? 0)),
  };
}

function mapVisits(
  squares: readonly MapSquare[],
  visits: ReadonlyMap<string, readonly number[]>,
  periods: number,
): MapVisits {
  const of = (resolution: MapSquare["resolution_m"], place: number) =>
    squares
      .filter(({ resolution_m }) => resolution_m === resolution)
      .toSorted((one, other) => one.id - other.id)
      .map(({ code }) => visits.get(code)?.[place] ?? 0);
  return { hectads: Array.from({ length: periods }, (_, period) => of(10_000, period)), tetrads: of(2_000, 0) };
}

function mapSettings(squares: readonly MapSquare[], atlas: AtlasFile, ground: MapGround): MapSettings {
  const { periods, compared, taxa, invented, coverage_minimum_visits, group } = atlas;
  const place = (id: string) => periods.findIndex((period) => period.id === id);
  return {
    bounds: boundsOf(squares),
    land: ground.land !== undefined,
    periods: periods.map(({ label }) => ({ label })),
    compared: compared && [place(compared[0]), place(compared[1])],
    taxa: taxa
      .filter(({ generalised_to }) => generalised_to !== "withheld")
      .map(({ slug, vernacular_name }) => ({ slug, name: vernacular_name })),
    invented,
    coverage_minimum_visits,
    group: group.many,
  };
}
