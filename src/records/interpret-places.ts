import type { Database, TableFiller } from "../engine/database.ts";
import { datumShiftAt } from "../geodesy/accuracy.ts";
import type { GridId } from "../grids/grid.ts";
import { NoteRows } from "./note-rows.ts";
import { isUnplaced, type Place, type PlaceFields, type PlacingRules, type Unplaced, unplaced } from "./place.ts";
import { placeFromCoordinates } from "./place-from-coordinates.ts";
import { placeFromProjected } from "./place-from-projected.ts";
import { placeFromReference } from "./place-from-reference.ts";
import { generalisedRadius } from "./radius.ts";
import { type Disguise, squareInDisguise } from "./square-in-disguise.ts";
import { type Support, supportedSquare, visitPlace } from "./supported-squares.ts";

/** Below this chance a point on a square's centre or corner is taken for the square without asking its source. */
const CERTAIN_CHANCE = 0.01;
/** A source writes squares as points when it has this many times more of them than chance would give … */
const FAR_ABOVE_CHANCE = 5;
/** … and at least this many. */
const FEWEST_IN_DISGUISE = 10;

const FIELDS = [
  "gridReference",
  "decimalLatitude",
  "decimalLongitude",
  "geodeticDatum",
  "coordinateUncertaintyInMeters",
  "easting",
  "northing",
  "dataGeneralizations",
] as const;

const COLUMNS = {
  place_id: "integer",
  refused: "text",
  territory: "text",
  grid: "text",
  hectad: "text",
  hectad_reason: "text",
  tetrad: "text",
  tetrad_reason: "text",
  tetrad_at_half: "text",
  visit_place: "text",
  longitude: "double",
  latitude: "double",
  radius_m: "double",
  size_m: "integer",
  read_from: "text",
  radius_from: "text",
  in_disguise: "boolean",
  near_line: "boolean",
} as const;

type Cell = string | number | boolean | null;
interface Waiting {
  id: number;
  source: string;
  place: Place;
  disguise: Disguise;
}

/**
 * Reads one place in whichever way its fields allow: grid reference first, coordinates, easting and northing.
 * A reference that cannot be read gives way to coordinates, with a note.
 */
export function readPlace(fields: PlaceFields, rules: PlacingRules): Place | Unplaced {
  const notes = [];
  if (fields.gridReference !== "") {
    const place = placeFromReference(fields.gridReference, rules);
    if (!isUnplaced(place)) return place;
    notes.push(place.refused);
    if (fields.decimalLatitude === "" && fields.easting === "") return { refused: place.refused, notes: [] };
  }
  if (fields.dataGeneralizations !== "" && generalisedRadius(fields.dataGeneralizations) === undefined)
    return unplaced(
      "generalised_without_size",
      "dataGeneralizations",
      fields.dataGeneralizations,
      "the place was coarsened, and the text names no size",
      "give the size of the cell, such as 10 km",
    );
  if (fields.decimalLatitude !== "" || fields.decimalLongitude !== "")
    return withNotes(placeFromCoordinates(fields, rules), notes);
  if (fields.easting !== "" || fields.northing !== "") return withNotes(placeFromProjected(fields, rules), notes);
  return unplaced("place_empty", "gridReference", "", "no place is given", "give a grid reference or coordinates");
}

function withNotes(answer: Place | Unplaced, notes: Place["notes"]): Place | Unplaced {
  return notes.length === 0 ? answer : { ...answer, notes: [...notes, ...answer.notes] };
}

/**
 * Interprets every distinct place of `place_texts` once and fills the tables `places` and `place_notes`.
 *
 * @param rulesOf placing rules of each source, by its id
 */
export async function interpretPlaces(database: Database, rulesOf: ReadonlyMap<string, PlacingRules>): Promise<void> {
  const filler = await database.fill("places", COLUMNS);
  const notes = new NoteRows("place_id");
  const waiting: Waiting[] = [];
  const points = new Map<string, number>();
  await database.batches(
    `SELECT place_id, source, ${FIELDS.map((field) => `"${field}"`).join(", ")} FROM place_texts ORDER BY place_id`,
    (columns, size) => {
      const rows = emptyRows();
      for (let index = 0; index < size; index += 1) {
        const source = String(columns["source"]?.[index]);
        const rules = rulesOf.get(source);
        if (rules === undefined) continue;
        const id = Number(columns["place_id"]?.[index]);
        const place = readPlace(fieldsAt(columns, index), rules);
        notes.add(id, isUnplaced(place) ? [place.refused, ...place.notes] : place.notes);
        if (isUnplaced(place)) {
          pushRefused(rows, id, place.refused.check);
          continue;
        }
        const candidates = candidatesOf(source, place);
        points.set(candidates, (points.get(candidates) ?? 0) + 1);
        const disguise = squareInDisguise(place);
        if (disguise !== undefined && disguise.chance >= CERTAIN_CHANCE) waiting.push({ id, source, place, disguise });
        else
          pushPlace(
            rows,
            id,
            disguise === undefined ? place : asSquare(place, disguise),
            rules,
            disguise !== undefined,
          );
      }
      filler.add(rows);
    },
  );
  addWaiting(filler, waiting, points, rulesOf);
  filler.done();
  await notes.writeTo(database, "place_notes");
}

/** Places among which chance would have spread those in disguise: the source's points, or its squares of one size. */
function candidatesOf(source: string, { shape }: Place): string {
  return `${source} ${shape.kind === "square" ? shape.square.size : "points"}`;
}

/** Settles points whose disguise chance could explain: squares only where their source has far more of them than chance gives. */
function addWaiting(
  filler: TableFiller,
  waiting: Waiting[],
  points: ReadonlyMap<string, number>,
  rulesOf: ReadonlyMap<string, PlacingRules>,
): void {
  const kind = ({ source, place, disguise }: Waiting) => `${candidatesOf(source, place)} ${disguise.square.size}`;
  const seen = new Map<string, { count: number; expected: number }>();
  for (const one of waiting) {
    const tally = seen.get(kind(one)) ?? { count: 0, expected: 0 };
    tally.count += 1;
    tally.expected = Math.max(
      tally.expected,
      (points.get(candidatesOf(one.source, one.place)) ?? 0) * one.disguise.chance,
    );
    seen.set(kind(one), tally);
  }
  const rows = emptyRows();
  for (const one of waiting) {
    const rules = rulesOf.get(one.source);
    const tally = seen.get(kind(one));
    if (rules === undefined || tally === undefined) continue;
    const taken = tally.count >= FEWEST_IN_DISGUISE && tally.count >= FAR_ABOVE_CHANCE * tally.expected;
    pushPlace(rows, one.id, taken ? asSquare(one.place, one.disguise) : one.place, rules, taken);
  }
  filler.add(rows);
}

/** A disguise never makes a place finer: a point known only to 5 km is no kilometre square, wherever it stands. */
function asSquare(place: Place, disguise: Disguise): Place {
  const finer = place.shape.kind === "circle" && place.shape.radius > disguise.square.size / Math.SQRT2 + place.blur;
  return finer && place.radiusFrom !== "default" && place.radiusFrom !== "digits"
    ? place
    : { ...place, shape: { kind: "square", square: disguise.square } };
}

function emptyRows(): Record<keyof typeof COLUMNS, Cell[]> {
  return Object.fromEntries(Object.keys(COLUMNS).map((name) => [name, []])) as unknown as Record<
    keyof typeof COLUMNS,
    Cell[]
  >;
}

function fieldsAt(columns: Record<string, unknown[]>, index: number): PlaceFields {
  return Object.fromEntries(
    FIELDS.map((field) => [field, String(columns[field]?.[index] ?? "").trim()]),
  ) as unknown as PlaceFields;
}

function pushRefused(rows: Record<keyof typeof COLUMNS, Cell[]>, id: number, check: string): void {
  for (const name of Object.keys(COLUMNS) as (keyof typeof COLUMNS)[]) rows[name].push(null);
  rows.place_id[rows.place_id.length - 1] = id;
  rows.refused[rows.refused.length - 1] = check;
}

function pushPlace(
  rows: Record<keyof typeof COLUMNS, Cell[]>,
  id: number,
  place: Place,
  rules: PlacingRules,
  inDisguise: boolean,
): void {
  const hectad = supportedSquare(place, 10_000, rules.minimumOverlap);
  const tetrad: Support =
    hectad.code === null ? { code: null, reason: hectad.reason } : supportedSquare(place, 2_000, rules.minimumOverlap);
  const atHalf = tetrad.code === null && place.shape.kind === "circle" ? supportedSquare(place, 2_000, 0.5) : tetrad;
  const grid: GridId = place.territory.grid.id;
  const row: Record<keyof typeof COLUMNS, Cell> = {
    place_id: id,
    refused: null,
    territory: place.territory.id,
    grid,
    hectad: hectad.code,
    hectad_reason: hectad.code === null ? hectad.reason : null,
    tetrad: tetrad.code,
    tetrad_reason: tetrad.code === null ? tetrad.reason : null,
    tetrad_at_half: atHalf.code,
    visit_place: visitPlace(place),
    longitude: place.longitude,
    latitude: place.latitude,
    radius_m: place.shape.kind === "circle" ? place.shape.radius : null,
    size_m: place.shape.kind === "square" ? place.shape.square.size : null,
    read_from: place.from,
    radius_from: place.radiusFrom,
    in_disguise: inDisguise,
    near_line: nearLine(place),
  };
  for (const name of Object.keys(COLUMNS) as (keyof typeof COLUMNS)[]) rows[name].push(row[name]);
}

/** Whether a point is nearer to a 2 km line than the datum's shift may be off there. */
function nearLine({ shape, longitude, latitude }: Place): boolean {
  if (shape.kind === "square") return false;
  const { crs, easting, northing } = shape.point;
  const toLine = (metres: number) => Math.abs(metres - Math.round(metres / 2000) * 2000);
  return Math.min(toLine(easting), toLine(northing)) < datumShiftAt(crs, longitude, latitude).accuracy;
}
