import type { Grid, ProjectedPoint, Square } from "../grids/grid.ts";
import { centreOf } from "../grids/squares.ts";
import type { RecordField } from "../scheme/settings.ts";
import type { Severity } from "./finding.ts";

/** The fields of a record that say where it was. */
export const PLACE_FIELDS = [
  "gridReference",
  "decimalLatitude",
  "decimalLongitude",
  "geodeticDatum",
  "coordinateUncertaintyInMeters",
  "easting",
  "northing",
  "dataGeneralizations",
] as const;

/** What they say, as written; empty text for no value. */
export type PlaceFields = Record<(typeof PLACE_FIELDS)[number], string>;

/** A territory ready for placing: its grid, and a test whether a WGS84 position lies in it. */
export interface PlacingTerritory {
  id: string;
  grid: Grid;
  holds(longitude: number, latitude: number): boolean;
}

/** What the settings say about placing the records of one source. */
export interface PlacingRules {
  territories: readonly PlacingTerritory[];
  /** Share of an uncertainty circle that must lie in a square, 0.5 to 1. */
  minimumOverlap: number;
  /** Code of the coordinate system of latitude and longitude where the row states none; undefined: such rows are not placed. */
  datum: string | undefined;
  /** Code of the coordinate system of easting and northing. */
  crs: string | undefined;
  /** Radius in metres the source's points have at least; undefined where the source sets none. */
  sourceUncertainty: number | undefined;
  /** Radius in metres of points about which nothing is known. */
  defaultUncertainty: number;
}

/** Something to say about a place: what was found in which field, and what would settle it. */
export interface PlaceNote {
  check: string;
  severity: Severity;
  field: RecordField;
  value: string;
  message: string;
  wayOut: string;
  /** A correction as field=value; field=value, for a person to rule on; never applied by itself. */
  proposal?: string;
}

/** Where a record was: a square of the territory's grid, or a circle around a point. */
export interface Place {
  territory: PlacingTerritory;
  shape: { kind: "square"; square: Square } | { kind: "circle"; point: ProjectedPoint; radius: number };
  /** Centre in WGS84 degrees. */
  longitude: number;
  latitude: number;
  /** Which text the place was read from. */
  from: "grid reference" | "coordinates" | "easting and northing";
  /** What set the radius, for circles. */
  radiusFrom: "stated" | "source" | "digits" | "default" | "generalisation" | "site" | "";
  /** The scheme's named site the record is of, and known no less well than; left out where it is of none. */
  site?: string;
  /** Half a unit of the last digit as written, plus the transform's error, in metres; 0 for squares. */
  blur: number;
  notes: PlaceNote[];
}

/** A record that could not be placed, with the note that says why. */
export interface Unplaced {
  refused: PlaceNote;
  notes: PlaceNote[];
}

/** True when a place could not be read. */
export function isUnplaced(answer: Place | Unplaced): answer is Unplaced {
  return "refused" in answer;
}

/** An answer whose refusal proposes a correction. */
export function proposing(answer: Unplaced, proposal: string): Unplaced {
  return { ...answer, refused: { ...answer.refused, proposal } };
}

/** Shorthand for a note that keeps a record from being placed. */
export function unplaced(
  check: string,
  field: RecordField,
  value: string,
  message: string,
  wayOut: string,
  notes: PlaceNote[] = [],
): Unplaced {
  return { refused: { check, severity: "ask", field, value, message, wayOut }, notes };
}

/**
 * The middle of what is known of a place, in WGS84 degrees: of the square where the text named one, for a text may give
 * its corner.
 *
 * @example middleOf(place) // => [-1.2512, 51.7512] for a circle around that point
 */
export function middleOf({ territory, shape, longitude, latitude }: Place): [longitude: number, latitude: number] {
  return shape.kind === "square" ? territory.grid.unproject(centreOf(shape.square)) : [longitude, latitude];
}
