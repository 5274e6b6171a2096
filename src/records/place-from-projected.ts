import { coordinateSystem } from "../geodesy/coordinate-systems.ts";
import { resolveCrs } from "../geodesy/resolve-crs.ts";
import { transform } from "../geodesy/transform.ts";
import type { SquareSize } from "../grids/grid.ts";
import { projectOn } from "./on-grid.ts";
import { type Place, type PlaceFields, type PlaceNote, type PlacingRules, type Unplaced, unplaced } from "./place.ts";
import { territoryOfSquare } from "./place-from-reference.ts";
import { radiusOf } from "./radius.ts";
import { mayBeThousands, statedNumber } from "./stated-number.ts";

const WGS84 = "EPSG:4326";
/** Systems of eastings and northings that are mistaken for each other: those of the islands' national grids. */
export const NATIONAL_PROJECTIONS = ["EPSG:27700", "EPSG:29903", "EPSG:2157"] as const;
const SIZES: readonly SquareSize[] = [10_000, 1_000, 100, 10, 1];

/**
 * Places a record by easting and northing. Trailing zeros are precision: 423000, 456000 names the kilometre square
 * whose south-west corner that is, when the numbers are on a grid of the atlas; other numbers are points.
 */
export function placeFromProjected(fields: PlaceFields, rules: PlacingRules): Place | Unplaced {
  const both = `${fields.easting}, ${fields.northing}`;
  const easting = statedNumber(fields.easting);
  const northing = statedNumber(fields.northing);
  const isGrouped = mayBeThousands(fields.easting) || mayBeThousands(fields.northing);
  if (easting === undefined || northing === undefined || isGrouped)
    return unplaced(
      "easting_northing_unreadable",
      "easting",
      both,
      "are not two numbers of metres",
      "write metres without a mark for thousands, such as 423000 and 456000",
    );
  const crs = rules.crs === undefined ? undefined : resolveCrs(rules.crs);
  if (crs === undefined)
    return unplaced(
      "crs_not_stated",
      "easting",
      both,
      "have no coordinate system",
      "set crs for the source, for example EPSG:27700",
    );
  const position = toWgs84(crs, easting, northing);
  const territory = position && rules.territories.find((candidate) => candidate.holds(position[0], position[1]));
  const point = position && territory && projectOn(territory.grid, position[0], position[1]);
  if (position === undefined || territory === undefined || point === undefined)
    return outside(rules, crs, easting, northing, both);
  const size = squareSizeOf(easting, northing);
  const square =
    size === undefined || point.crs !== crs ? undefined : territory.grid.squareAt({ crs, easting, northing }, size);
  if (square !== undefined && square.size > 10) {
    const owner = territoryOfSquare(square, rules.territories) ?? territory;
    return {
      territory: owner,
      shape: { kind: "square", square },
      longitude: position[0],
      latitude: position[1],
      from: "easting and northing",
      radiusFrom: "",
      blur: 0,
      notes: [],
    };
  }
  const notes: PlaceNote[] = [];
  const { radius, from } = radiusOf(fields, rules, (size ?? 1) * Math.SQRT2, notes);
  const blur = Math.max(10, (size ?? 1) / 2 + coordinateSystem(point.crs).accuracy);
  return {
    territory,
    shape: { kind: "circle", point, radius },
    longitude: position[0],
    latitude: position[1],
    from: "easting and northing",
    radiusFrom: from,
    blur,
    notes,
  };
}

/** What might be meant by numbers in no territory: those of another country's grid. Proposed, never used. */
function outside(rules: PlacingRules, crs: string, easting: number, northing: number, both: string): Unplaced {
  const fitting = NATIONAL_PROJECTIONS.find((other) => {
    const position = other === crs ? undefined : toWgs84(other, easting, northing);
    return position !== undefined && rules.territories.some(({ holds }) => holds(...position));
  });
  if (fitting !== undefined)
    return unplaced(
      "projection_offset",
      "easting",
      both,
      `lie in no territory of the atlas when read in ${crs}, but would in ${fitting}, ${coordinateSystem(fitting).name}`,
      "correct the place if they are of that system, or the source's crs if all are",
    );
  return unplaced(
    "outside_territories",
    "easting",
    both,
    `lie in no territory of the atlas when read in ${crs}`,
    "check them, and the source's crs",
  );
}

function toWgs84(crs: string, easting: number, northing: number): [number, number] | undefined {
  try {
    return transform(crs, WGS84, easting, northing);
  } catch {
    return undefined;
  }
}

/** The largest power of ten, 10 km at most, that both numbers are whole multiples of. */
function squareSizeOf(easting: number, northing: number): SquareSize | undefined {
  return SIZES.find((size) => easting % size === 0 && northing % size === 0);
}
