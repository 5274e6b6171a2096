import type { GridId } from "../../../src/grids/grid.ts";
import { gridOf } from "../grids.ts";
import { longitudeLatitude } from "../places-as-written.ts";
import type { Random } from "../random.ts";
import type { Row } from "../source.ts";
import { type Correction, columnOf, type ErrorKind, hasColumn, put } from "./error-kind.ts";

const REFERENCES = ["gridReference", "Grid ref"] as const;
const hasReference = hasColumn(...REFERENCES);
const hasCoordinates = hasColumn("decimalLatitude");

/** Errors in where. */
export const placeErrors: readonly ErrorKind[] = [
  { kind: "swapped-coordinates", cards: 2, fits: hasCoordinates, spoil: swap },
  {
    kind: "longitude-sign-lost",
    cards: 3,
    fits: hasCoordinates,
    spoil: (row) => put(row, "decimalLongitude", (row.cells["decimalLongitude"] as string).replace("-", "")),
  },
  { kind: "wrong-100-km-letters", cards: 3, fits: hasReference, spoil: wrongLetters },
  { kind: "reference-of-other-grid", cards: 2, fits: hasReference, spoil: otherGrid },
  {
    kind: "transposed-digits",
    cards: 4,
    fits: (source) => hasReference(source) || hasCoordinates(source),
    spoil: transpose,
  },
  { kind: "hectad-as-point", cards: 2, fits: hasCoordinates, spoil: hectadMiddle },
  {
    kind: "zero-uncertainty",
    cards: 4,
    fits: hasColumn("coordinateUncertaintyInMeters"),
    spoil: (row) => put(row, "coordinateUncertaintyInMeters", "0"),
  },
  { kind: "other-coordinate-system", cards: 8, fits: hasColumn("easting"), spoil: otherSystem },
];

function swap(row: Row): Correction | undefined {
  const latitude = row.cells["decimalLatitude"] as string;
  const longitude = row.cells["decimalLongitude"] as string;
  row.cells["decimalLatitude"] = longitude;
  row.cells["decimalLongitude"] = latitude;
  return { column: "decimalLatitude+decimalLongitude", right: `${latitude} ${longitude}` };
}

function wrongLetters(row: Row, random: Random): Correction | undefined {
  const column = columnOf(row, ...REFERENCES);
  const reference = row.cells[column] as string;
  const { grid } = row.sighting.tetrad;
  if (grid === "channel-islands") {
    return undefined;
  }
  const last = grid === "british" ? 1 : 0;
  const letter = random.pick([..."ABCDEFGHJKLMNOPQRSTUVWXYZ"]);
  return letter === reference.charAt(last).toUpperCase()
    ? undefined
    : put(row, column, reference.slice(0, last) + letter + reference.slice(last + 1));
}

/** An Irish bee with a British reference or the other way, where the other grid reaches so far. */
function otherGrid(row: Row): Correction | undefined {
  const other: GridId = row.sighting.tetrad.grid === "british" ? "irish" : "british";
  const grid = gridOf(other);
  const square = grid.squareAt(grid.project(...longitudeLatitude(row.sighting)), 1000);
  return square && put(row, columnOf(row, ...REFERENCES), grid.format(square));
}

/** Two neighbouring digits change places: in a reference, or among the decimals of a latitude. */
function transpose(row: Row, random: Random): Correction | undefined {
  const column = columnOf(row, ...REFERENCES, "decimalLatitude");
  const text = row.cells[column] as string;
  const places = [...text.matchAll(/(?<=[\d.]|[A-Za-z])(\d)(?=(\d))/g)]
    .filter((match) => match[1] !== match[2] && (column !== "decimalLatitude" || match.index > 2))
    .map((match) => match.index);
  if (places.length === 0) {
    return undefined;
  }
  const at = column === "decimalLatitude" ? (places[0] as number) : random.pick(places);
  return put(row, column, text.slice(0, at) + text.charAt(at + 1) + text.charAt(at) + text.slice(at + 2));
}

/** The middle of the 10 km square, given as a point good to 10 m. */
function hectadMiddle(row: Row): Correction | undefined {
  const { tetrad, easting, northing } = row.sighting;
  const middle = (value: number): number => Math.floor(value / 10_000) * 10_000 + 5000;
  const [longitude, latitude] = longitudeLatitude({ tetrad, easting: middle(easting), northing: middle(northing) });
  const right = `${row.cells["decimalLatitude"]} ${row.cells["decimalLongitude"]}`;
  row.cells["decimalLatitude"] = latitude.toFixed(5);
  row.cells["decimalLongitude"] = longitude.toFixed(5);
  if (row.cells["coordinateUncertaintyInMeters"] !== undefined) {
    row.cells["coordinateUncertaintyInMeters"] = "10";
  }
  return { column: "decimalLatitude+decimalLongitude", right };
}

/** Easting and northing of the Irish grid, said to be British. */
function otherSystem(row: Row): Correction | undefined {
  const { easting, northing } = gridOf("irish").project(...longitudeLatitude(row.sighting));
  const right = `${row.cells["easting"]} ${row.cells["northing"]}`;
  row.cells["easting"] = String(Math.floor(easting / 100) * 100);
  row.cells["northing"] = String(Math.floor(northing / 100) * 100);
  return { column: "easting+northing", right };
}
