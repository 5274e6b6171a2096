import { fileURLToPath } from "node:url";
import type { GridId } from "../../src/grids/grid.ts";
import { gridNamed } from "../../src/grids/index.ts";
import { isUnplaced, type Place, type PlaceFields, type PlacingRules, type Unplaced } from "../../src/records/place.ts";
import { readPlace } from "../../src/records/read-place.ts";
import { placingTerritories } from "../../src/records/record-stage.ts";
import { supportedSquare } from "../../src/records/supported-squares.ts";
import { readScheme } from "../../src/scheme/scheme.ts";

/** Britain and the Isle of Man, Ireland, and the Channel Islands with their polygons, as the demonstration has them. */
const TERRITORIES = placingTerritories(readScheme(fileURLToPath(new URL("../../content", import.meta.url))));

const NOWHERE: PlaceFields = {
  gridReference: "",
  decimalLatitude: "",
  decimalLongitude: "",
  geodeticDatum: "",
  coordinateUncertaintyInMeters: "",
  easting: "",
  northing: "",
  dataGeneralizations: "",
};

/** Fields of a record's place; what is not given is empty. */
export function fields(given: Partial<PlaceFields>): PlaceFields {
  return { ...NOWHERE, ...given };
}

/** Fields of a position in degrees. */
export function position(
  decimalLatitude: string,
  decimalLongitude: string,
  more: Partial<PlaceFields> = {},
): PlaceFields {
  return fields({ decimalLatitude, decimalLongitude, ...more });
}

/** Rules of a source of the three territories, in WGS84 where nothing else is said. */
export function rules(more: Partial<PlacingRules> = {}): PlacingRules {
  return {
    territories: TERRITORIES,
    minimumOverlap: 0.9,
    datum: "EPSG:4326",
    crs: undefined,
    sourceUncertainty: undefined,
    defaultUncertainty: 100,
    ...more,
  };
}

/** A place, or an error that tells why there is none. */
export function placed(given: PlaceFields, by: PlacingRules = rules()): Place {
  const place = readPlace(given, by);
  if (isUnplaced(place)) throw new Error(`not placed: ${place.refused.message}`);
  return place;
}

/** Why there is no place: the check, the field and the value. */
export function refused(given: PlaceFields, by: PlacingRules = rules()): Unplaced["refused"] {
  const place = readPlace(given, by);
  if (!isUnplaced(place)) throw new Error(`placed in ${place.territory.id}`);
  return place.refused;
}

/** The 10 km and the 2 km square a place supports, null for none. */
export function squaresOf(place: Place, minimumOverlap = 0.9): [hectad: string | null, tetrad: string | null] {
  return [supportedSquare(place, 10_000, minimumOverlap).code, supportedSquare(place, 2_000, minimumOverlap).code];
}

/** A circle on a grid, in metres of the grid itself. */
export function circle(gridId: GridId, easting: number, northing: number, radius: number): Place {
  const grid = gridNamed(gridId);
  const crs = gridId === "british" ? "EPSG:27700" : "EPSG:29903";
  const point = { crs, easting, northing };
  const [longitude, latitude] = grid.unproject(point);
  return {
    territory: { id: gridId, grid, holds: () => true },
    shape: { kind: "circle", point, radius },
    longitude,
    latitude,
    from: "coordinates",
    radiusFrom: "stated",
    blur: 10,
    notes: [],
  };
}
