/**
 * Invented published tables over every land square of Britain, Ireland and the Channel Islands, or over a small
 * part of another grid, for tests and pictures of the maps. No number in them is an expected value of a measure.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { FeatureCollection } from "geojson";
import { type GridId, isRefusal } from "../../src/grids/grid.ts";
import { gridNamed } from "../../src/grids/index.ts";
import { cornersOf } from "../../src/grids/squares.ts";
import type { AtlasFile, HectadSummary, SquareState, TaxonFile, TaxonSquare } from "../../src/publishing/contracts.ts";
import type { MapSquare } from "../../src/publishing/square-tiles.ts";

/** What of the published files the maps read. */
export interface MapFixture {
  readonly atlas: Pick<
    AtlasFile,
    "map" | "periods" | "compared" | "territories" | "invented" | "group" | "coverage_minimum_visits"
  >;
  readonly hectads: HectadSummary[];
  readonly taxon: Pick<TaxonFile, "squares" | "uncovered" | "change">;
}

const LAND = fileURLToPath(new URL("../../content/land-squares.csv", import.meta.url));

/** Rows of the demonstration's list of land squares: grid, territory, code, letters of land tetrads. */
export function landRows(): { grid: GridId; territory: string; hectad: string; tetrads: string }[] {
  return readFileSync(LAND, "utf8")
    .trim()
    .split("\n")
    .slice(1)
    .map((line) => {
      const [grid = "", territory = "", hectad = "", tetrads = ""] = line.split(",");
      return { grid: grid as GridId, territory, hectad, tetrads };
    });
}

/** The demonstration's coast in longitude and latitude. */
export function landOverview(): FeatureCollection {
  return JSON.parse(
    readFileSync(fileURLToPath(new URL("../../content/basemap/land-overview.geojson", import.meta.url)), "utf8"),
  ) as FeatureCollection;
}

/** A number from 0 to below 1 that depends on its inputs alone (FNV-1a with a final mix). */
export function chance(...parts: readonly (string | number)[]): number {
  let hash = 0x811c9dc5;
  for (const sign of parts.join("/")) hash = Math.imul(hash ^ sign.charCodeAt(0), 0x01000193);
  hash = Math.imul(hash ^ (hash >>> 16), 0x45d9f3b);
  return ((hash ^ (hash >>> 15)) >>> 0) / 4294967296;
}

/** A hectad with invented visits: many in the south and east, few in the north and west. */
export function hectadOf(gridId: GridId, territory: string, code: string): HectadSummary {
  const grid = gridNamed(gridId);
  const square = grid.parse(code);
  if (isRefusal(square)) throw new Error(`${code}: ${square.refused}`);
  const [longitude, latitude] = grid.unproject({
    ...square,
    easting: square.easting + 5_000,
    northing: square.northing + 5_000,
  });
  const busy = Math.max(0.05, 1 - Math.abs(latitude - 52) / 9) * (longitude < -6 ? 0.35 : 1);
  const visits = [Math.floor(chance(code, 1) ** 2 * 26 * busy), Math.floor(chance(code, 2) ** 1.6 * 60 * busy)];
  const taxa = visits.map((number) => Math.min(18, Math.round(Math.sqrt(number) * 2.4)));
  return {
    square: code,
    slug: code.toLowerCase(),
    grid: gridId,
    territory,
    crs: square.crs,
    easting: square.easting,
    northing: square.northing,
    latitude,
    longitude,
    on_land: true,
    visits,
    taxa,
    taxa_all: Math.max(...taxa),
    records: (visits[0] ?? 0) + (visits[1] ?? 0),
  };
}

/** A taxon of an invented range: common south of `edge` degrees north, thinning out beyond it. */
export function taxonSquares(
  hectads: readonly HectadSummary[],
  edge: number,
  seed: string,
): TaxonFile["squares"]["10000"] {
  return hectads.flatMap((hectad): TaxonSquare[] => {
    const likely = (1 / (1 + Math.exp((hectad.latitude - edge) * 1.6))) * (hectad.longitude < -6 ? 0.6 : 1);
    const covered = hectad.visits.map((visits) => visits >= 5);
    const found = hectad.visits.map(
      (visits, period) => visits > 0 && chance(seed, hectad.square, period) < likely * (visits >= 5 ? 0.95 : 0.4),
    );
    if (!found.some(Boolean)) return [];
    return [
      {
        square: hectad.square,
        state: stateOf(found, covered),
        covered,
        records: found.map((yes, period) => (yes ? 1 + (hectad.visits[period] ?? 0) : 0)),
        visits: found.map((yes) => (yes ? 1 : 0)),
        first_year: 1991,
        last_year: 2020,
      },
    ];
  });
}

function stateOf([before, since]: readonly boolean[], covered: readonly boolean[]): SquareState {
  if (before && since) return "retained";
  if (covered.every(Boolean)) return since ? "gained" : "lost";
  return since ? "not_comparable_since" : "not_comparable_before";
}

/** Hectads without a record that lack cover, by period. */
export function uncoveredOf(
  hectads: readonly HectadSummary[],
  squares: readonly TaxonSquare[],
): TaxonFile["uncovered"] {
  const recorded = new Set(squares.map(({ square }) => square));
  const blank = hectads
    .filter(({ square }) => !recorded.has(square))
    .map(({ square, visits }) => ({ square, before: (visits[0] ?? 0) >= 5, since: (visits[1] ?? 0) >= 5 }));
  return {
    neither: blank.filter(({ before, since }) => !before && !since).map(({ square }) => square),
    later_only: blank.filter(({ before, since }) => !before && since).map(({ square }) => square),
    earlier_only: blank.filter(({ before, since }) => before && !since).map(({ square }) => square),
  };
}

/** The whole of the demonstration's ground with one invented taxon, two periods. */
export function britainAndIreland(edge = 54, seed = "red"): MapFixture {
  const hectads = landRows().map(({ grid, territory, hectad }) => hectadOf(grid, territory, hectad));
  const squares = taxonSquares(hectads, edge, seed);
  return {
    hectads,
    taxon: {
      squares: { "10000": squares, "2000": tetradsOf(squares, seed) },
      uncovered: uncoveredOf(hectads, squares),
      change: [],
    },
    atlas: {
      map: { crs: "EPSG:27700", insets: [{ territory: "channel-islands", corner: "south-east" }] },
      periods: [
        { id: "p1", label: "1990–2005", from: 1990, to: 2005 },
        { id: "p2", label: "2006–2024", from: 2006, to: 2024 },
      ],
      compared: ["p1", "p2"],
      territories: [
        {
          id: "britain",
          name: "Great Britain and the Isle of Man",
          grid: "british",
          grid_name: "British National Grid",
          land_hectads: 2864,
        },
        { id: "ireland", name: "Ireland", grid: "irish", grid_name: "Irish Grid", land_hectads: 1018 },
        {
          id: "channel-islands",
          name: "Channel Islands",
          grid: "channel-islands",
          grid_name: "Channel Islands grid (UTM 30N)",
          land_hectads: 22,
        },
      ],
      invented: true,
      group: { one: "bumblebee", many: "bumblebees" },
      coverage_minimum_visits: 5,
    },
  };
}

function tetradsOf(squares: readonly TaxonSquare[], seed: string): TaxonSquare[] {
  const letters = new Map(landRows().map(({ hectad, tetrads }) => [hectad, tetrads]));
  return squares.flatMap((square) =>
    [...(letters.get(square.square) ?? "")]
      .filter((letter) => chance(seed, square.square, letter) < 0.3)
      .map((letter) => ({ ...square, square: `${square.square}${letter}` })),
  );
}

/** Every hectad and land tetrad of the fixture with the longitudes and latitudes of its corners; ids as the tiles need them. */
export function mapSquares(): MapSquare[] {
  const rows = landRows();
  const hectads = rows.map(({ grid, hectad }) => cornersOnEarth(grid, hectad));
  const tetrads = rows.flatMap(({ grid, hectad, tetrads: letters }) =>
    [...letters].map((letter) => cornersOnEarth(grid, `${hectad}${letter}`)),
  );
  return [...hectads, ...tetrads].map((square, id) => ({ id, ...square }));
}

/** A square's code, size and corners in longitude and latitude, from the south-west against the clock. */
export function cornersOnEarth(gridId: GridId, code: string): Omit<MapSquare, "id"> {
  const grid = gridNamed(gridId);
  const square = grid.parse(code);
  if (isRefusal(square)) throw new Error(`${code}: ${square.refused}`);
  const corners = cornersOf(square).map((corner) => grid.unproject(corner));
  return { code, resolution_m: square.size === 2_000 ? 2_000 : 10_000, corners };
}
