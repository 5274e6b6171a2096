import type { SquareState } from "../../publishing/contracts.ts";
import type { MapSettings, MapSquareList, MapVisits, TaxonColumns, TaxonStates } from "../../publishing/map-folder.ts";

/** One recorded square of a taxon, unpacked. */
export interface RecordedSquare {
  readonly state: SquareState;
  readonly covered: readonly boolean[];
  readonly records: readonly number[];
}

/** One taxon on the map, by square id. */
export interface TaxonOnMap {
  readonly name: string;
  readonly hectads: ReadonlyMap<number, RecordedSquare>;
  readonly tetrads: ReadonlyMap<number, RecordedSquare>;
  /** Hectads without a record that are covered in fewer than all compared periods. */
  readonly uncovered: ReadonlyMap<number, "neither" | "later_only" | "earlier_only">;
  readonly judgedAt2km: boolean;
  /** Whether it is shown at 10 km on purpose. */
  readonly shownAt10km: boolean;
}

/** Codes and middles of squares, by id. */
export interface SquareBook {
  readonly first: number;
  readonly codes: readonly string[];
  readonly ids: ReadonlyMap<string, number>;
  middle(id: number): [longitude: number, latitude: number] | undefined;
}

const STATES: Readonly<Record<string, SquareState>> = Object.freeze({
  r: "retained",
  g: "gained",
  l: "lost",
  s: "not_comparable_since",
  b: "not_comparable_before",
  o: "recorded",
});

/**
 * Unpacks the columns of one size of squares.
 *
 * @param columns ids as differences, states as letters, cover as bits, records by period
 * @returns squares by id
 * @example unpackColumns({ ids: [3, 2], states: "rg", covered: [3, 3], records: [[1, 0], [4, 2]] }).get(5)?.state // "gained"
 */
export function unpackColumns({ ids, states, covered, records }: TaxonColumns): Map<number, RecordedSquare> {
  const squares = new Map<number, RecordedSquare>();
  let id = 0;
  ids.forEach((step, i) => {
    id += step;
    squares.set(id, {
      state: STATES[states[i] ?? "o"] ?? "recorded",
      covered: records.map((_, period) => Math.floor((covered[i] ?? 0) / 2 ** period) % 2 === 1),
      records: records.map((column) => column[i] ?? 0),
    });
  });
  return squares;
}

/** Unpacks one taxon's file. @example unpackTaxon(file).hectads.size // 1379 */
export function unpackTaxon(file: TaxonStates): TaxonOnMap {
  const uncovered = new Map<number, "neither" | "later_only" | "earlier_only">();
  for (const kind of ["neither", "later_only", "earlier_only"] as const) {
    let id = 0;
    for (const step of file.uncovered[kind]) {
      id += step;
      uncovered.set(id, kind);
    }
  }
  return {
    name: file.name,
    hectads: unpackColumns(file.hectads),
    tetrads: unpackColumns(file.tetrads),
    uncovered,
    judgedAt2km: file.judged_at_2km,
    shownAt10km: file.shown_at_10km,
  };
}

/** Unpacks codes and middles. @example unpackSquares({ first: 0, codes: "NZ27", middles: [-1610, 55080] }).middle(0) // [-1.61, 55.08] */
export function unpackSquares({ first, codes, middles }: MapSquareList): SquareBook {
  const list = codes === "" ? [] : codes.split(" ");
  const places: [number, number][] = [];
  let [longitude, latitude] = [0, 0];
  list.forEach((_, i) => {
    longitude += middles[2 * i] ?? 0;
    latitude += middles[2 * i + 1] ?? 0;
    places.push([longitude / 1000, latitude / 1000]);
  });
  return {
    first,
    codes: list,
    ids: new Map(list.map((code, i) => [code, first + i])),
    middle: (id) => places[id - first],
  };
}

async function fetchJson<T>(address: string): Promise<T> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address} was not found`);
  return (await response.json()) as T;
}

/** Fetches the map's settings from its folder. */
export function fetchSettings(folder: string): Promise<MapSettings> {
  return fetchJson(`${folder}map.json`);
}

/** Fetches one taxon from the map's folder, under the name the page's language has for it. */
export async function fetchTaxon(folder: string, slug: string, name: string): Promise<TaxonOnMap> {
  return { ...unpackTaxon(await fetchJson(`${folder}taxa/${slug}.json`)), name };
}

/** Fetches the visits to each square. */
export function fetchVisits(folder: string): Promise<MapVisits> {
  return fetchJson(`${folder}visits.json`);
}

/** Fetches the codes and middles of one size of squares. */
export async function fetchSquares(folder: string, size: "hectads" | "tetrads"): Promise<SquareBook> {
  return unpackSquares(await fetchJson(`${folder}${size}.json`));
}
