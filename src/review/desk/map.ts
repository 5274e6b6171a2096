import type { MapAnswer } from "./answers.ts";
import type { Desk } from "./desk.ts";
import { centreOf, EDGE, FOLD, outlineOf, partOf } from "./map-shapes.ts";
import { type InterpretedRow, interpretedRow } from "./record.ts";
import { type Point, pathOf, type Sheet, sheetsOf } from "./sheet.ts";

/** Least half-width of the map, in kilometres. */
const CLOSEST = 90;
/** How much farther than the nearest square the map reaches. */
const BEYOND = 1.25;
/** Where no place was read, and nothing else is known. */
const WHOLE = 700;

interface SquareRow {
  grid: string;
  hectad: string;
  records: number;
  earlier: boolean | null;
  recent: boolean | null;
}

/** Draws the maps of a desk: a record against the squares of its taxon, on a sheet where its own grid stands upright. */
export function mapsOf(desk: Desk): {
  map(record: number): Promise<MapAnswer | null>;
  /** The land of a sheet drawn before, as a path. */
  land(crs: string): string;
} {
  const sheetFor = sheetsOf(desk.scheme);
  const drawn = new Map<string, Sheet>();
  return {
    async map(record) {
      const row = await interpretedRow(desk, record);
      if (row === undefined) return null;
      const { territory, longitude, latitude, taxon_id } = row;
      const middle = longitude === null || latitude === null ? await middleOf(desk) : ([longitude, latitude] as const);
      const sheet = sheetFor(territory ?? "", ...middle);
      drawn.set(sheet.crs, sheet);
      return drawMap(
        sheet,
        row,
        await squaresOf(desk, taxon_id ?? ""),
        await visitedOf(desk),
        await proposedOn(sheet, desk, record),
      );
    },
    land: (crs) => drawn.get(crs)?.land ?? "",
  };
}

function squaresOf({ database }: Desk, taxon: string): Promise<SquareRow[]> {
  return database.rows<SquareRow>(
    "SELECT grid, hectad, records, earlier, recent FROM desk_squares WHERE taxon_id = $taxon ORDER BY grid, hectad",
    { taxon },
  );
}

function visitedOf({ database }: Desk): Promise<{ grid: string; hectad: string }[]> {
  return database.rows("SELECT grid, hectad FROM desk_visited ORDER BY grid, hectad");
}

/** Where a proposed reference lies; empty where none is proposed. */
async function proposedOn(sheet: Sheet, { database, scheme }: Desk, record: number): Promise<string> {
  const [found] = await database.rows<{ reference: string }>(
    "SELECT trim(regexp_extract(proposal, 'gridReference=([^;]+)', 1)) AS reference FROM desk_questions WHERE record_no = $record AND contains(proposal, 'gridReference=') LIMIT 1",
    { record },
  );
  if (found === undefined) return "";
  const corners = scheme.territories.map(({ grid }) => sheet.corners(grid, found.reference));
  return pathOf(corners.find((one) => one !== undefined) ?? []);
}

/** The middle of all places, where a record has none. */
async function middleOf({ database }: Desk): Promise<readonly [number, number]> {
  const [middle] = await database.rows<{ longitude: number | null; latitude: number | null }>(
    "SELECT median(longitude) AS longitude, median(latitude) AS latitude FROM places",
  );
  return [middle?.longitude ?? 0, middle?.latitude ?? 0];
}

function drawMap(
  sheet: Sheet,
  row: InterpretedRow,
  squares: readonly SquareRow[],
  visited: readonly { grid: string; hectad: string }[],
  proposed: string,
): MapAnswer {
  const { longitude, latitude } = row;
  const here = longitude === null || latitude === null ? undefined : sheet.at(longitude, latitude);
  const placed = squares.flatMap((square) => {
    const corners = sheet.corners(square.grid, square.hectad);
    return corners === undefined ? [] : [{ ...square, corners }];
  });
  // A square that this record alone makes says nothing about it.
  const others = placed.filter(
    ({ hectad, records }) => !(hectad === row.hectad && records === 1 && row.status === "used"),
  );
  const nearest = here && nearestOf(here, others);
  const half = here === undefined ? WHOLE : Math.max(CLOSEST, (nearest?.km ?? CLOSEST) * BEYOND);
  const [x, y] = here ?? centreOf(placed.flatMap(({ corners }) => corners)) ?? [0, 0];
  const inView = ({ corners }: { corners: readonly Point[] }) =>
    corners.some(([cx, cy]) => Math.abs(cx - x) < half + 10 && Math.abs(cy - y) < half + 10);
  const path = (those: readonly { corners: readonly Point[] }[], from: number, to: number) =>
    those
      .filter(inView)
      .map(({ corners }) => pathOf(partOf(corners, from, to)))
      .join("");
  const grounds = visited.flatMap(({ grid, hectad }) => {
    const corners = sheet.corners(grid, hectad);
    return corners === undefined ? [] : [{ corners }];
  });
  return {
    crs: sheet.crs,
    view: [x - half, y - half, 2 * half, 2 * half],
    here: outlineOf(sheet, row, here),
    middle: here === undefined ? null : [here[0], here[1]],
    proposed,
    visited: path(grounds, 0, 1),
    both: path(
      others.filter(({ earlier, recent }) => earlier === true && recent === true),
      EDGE,
      1 - EDGE,
    ),
    earlier: path(
      others.filter(({ earlier, recent }) => earlier === true && recent !== true),
      EDGE,
      FOLD,
    ),
    recent: path(
      others.filter(({ earlier, recent }) => earlier !== true && recent === true),
      FOLD,
      1 - EDGE,
    ),
    nearest: nearest ?? null,
    squares: others.length,
  };
}

function nearestOf(
  [x, y]: Point,
  squares: readonly { hectad: string; corners: readonly Point[] }[],
): MapAnswer["nearest"] {
  let best: MapAnswer["nearest"] = null;
  for (const { hectad, corners } of squares) {
    const at = centreOf(corners);
    if (at === undefined) continue;
    const km = Math.hypot(at[0] - x, at[1] - y);
    if (best === null || km < best.km) best = { square: hectad, km, at: [at[0], at[1]] };
  }
  return best;
}
