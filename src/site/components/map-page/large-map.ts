import type { AtlasFile, TaxonFile } from "../../../publishing/contracts.ts";
import type { AtlasMap } from "../../maps/atlas-map.ts";
import { type TimeLayers, timeLayers } from "../../maps/large/layers.ts";
import { type Place, placesOf } from "../../maps/large/places.ts";
import { atTime, type Time, timesOf } from "../../maps/large/times.ts";
import { sortSquares, type TaxonSquares } from "../../maps/taxon-squares.ts";
import { say } from "../../words/say.ts";

/** A place of the large map under its name. */
export interface NamedPlace extends Place {
  readonly name: string;
}

/** What is counted of one place at one time. */
export interface Counted {
  readonly time: Time;
  readonly squares: TaxonSquares;
  /** Squares of 2 km with a record; undefined where they are not shown. */
  readonly tetrads: number | undefined;
  /** Whether blank and hatched squares may be counted: coverage is published of the compared periods only. */
  readonly isCoverKnown: boolean;
}

/** Everything the large map of one taxon shows. */
export interface LargeMap {
  readonly places: readonly NamedPlace[];
  readonly times: readonly Time[];
  readonly layers: readonly TimeLayers[];
  /** By place, then time. */
  readonly counted: readonly (readonly Counted[])[];
}

/**
 * The large map of one taxon: its places, its times, the drawings they share, and the squares of each.
 *
 * @param map layout of the atlas's maps
 * @param atlas periods and territories
 * @param taxon its squares
 * @example largeMapOf(map, atlas, taxon).places[0]?.name // "The whole atlas"
 */
export function largeMapOf(map: AtlasMap, atlas: AtlasFile, taxon: TaxonFile): LargeMap {
  const label = (id: string | undefined) => atlas.periods.find((period) => period.id === id)?.label ?? "";
  const times = timesOf(atlas, {
    compared: say("large-map.compared", { earlier: label(atlas.compared?.[0]), later: label(atlas.compared?.[1]) }),
    all: say("large-map.all-dates"),
  });
  const places = placesOf(map, atlas).map((place) => ({ ...place, name: nameOf(place, atlas) }));
  const shown = { atlas, taxon };
  const layers = times.map((time, n) => timeLayers(map, shown, time, n));
  const hectadOf = hectadsOfTetrads(map);
  const counted = places.map((place) => {
    const codes = new Set(place.hectads.map(({ square }) => square));
    const only = { ...map, hectads: place.hectads };
    return times.map((time, n): Counted => {
      const own = atTime(atlas, taxon, time, (code) => codes.has(code));
      const tetrads =
        layers[n]?.tetrads === undefined || place.territory === "all" ? undefined : own.taxon.squares["2000"];
      return {
        time,
        squares: sortSquares(only, own.atlas, own.taxon, 10_000),
        tetrads: tetrads?.filter(({ square }) => codes.has(hectadOf(square) ?? "")).length,
        isCoverKnown: isCoverKnown(time, atlas),
      };
    });
  });
  return { places, times, layers, counted };
}

/** Of a time that was asked for and is not there, which would be a fault of the page. */
export function missingCount(place: number, time: number): never {
  throw new Error(`the large map has no place ${place} at time ${time}`);
}

function isCoverKnown({ kind, index }: Time, { compared, periods }: Pick<AtlasFile, "compared" | "periods">): boolean {
  if (kind === "compared") return true;
  if (kind === "all") return false;
  return compared === null ? index === periods.length - 1 : compared.includes(periods[index]?.id ?? "");
}

function nameOf({ territory, part }: Place, { territories }: Pick<AtlasFile, "territories">): string {
  const name = territories.find(({ id }) => id === territory)?.name;
  if (name === undefined) return say("large-map.whole");
  return part === "" ? name : say("large-map.part", { part, name });
}

/** Finds the square of 10 km that holds one of 2 km, by where both are drawn. */
function hectadsOfTetrads(map: AtlasMap): (code: string) => string | undefined {
  const key = (grid: string, inset: string | undefined, column: number, row: number) =>
    `${grid} ${inset ?? ""} ${column} ${row}`;
  const codes = new Map(
    map.hectads.flatMap(({ square }) => {
      const at = map.locate(square, 10_000);
      return at === undefined
        ? []
        : [[key(at.placement.grid, at.placement.inset, at.cell.column, at.cell.row), square] as const];
    }),
  );
  return (code) => {
    const at = map.locate(code, 2_000);
    if (at === undefined) return undefined;
    const { placement, cell } = at;
    return codes.get(key(placement.grid, placement.inset, Math.floor(cell.column / 5), Math.floor(cell.row / 5)));
  };
}
