import type { Database } from "../engine/database.ts";
import type { GridId } from "../grids/grid.ts";
import { nearLine } from "./near-line.ts";
import { NoteRows } from "./note-rows.ts";
import { isUnplaced, middleOf, PLACE_FIELDS, type PlaceFields, type PlacingRules } from "./place.ts";
import { readPlace } from "./read-place.ts";
import { disguiseNote, type SettledPlace, settleDisguises } from "./settle-disguises.ts";
import { type SitePoints, widenToSite } from "./site-points.ts";
import { type Support, supportedSquare, visitPlace } from "./supported-squares.ts";

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

/**
 * Interprets every distinct place of `place_texts` once and fills the tables `places` and `place_notes`.
 *
 * @param rulesOf placing rules of each source, by its id
 * @param sites label points of named sites, whose records are as uncertain as the site
 */
export async function interpretPlaces(
  database: Database,
  rulesOf: ReadonlyMap<string, PlacingRules>,
  sites: SitePoints = new Map(),
): Promise<void> {
  const filler = await database.fill("places", COLUMNS);
  const notes = await NoteRows.open(database, "place_notes", "place_id");
  const disguises = settleDisguises();
  await database.batches(
    `SELECT place_id, source, site, site_m, ${PLACE_FIELDS.map((field) => `"${field}"`).join(", ")} FROM place_texts ORDER BY place_id`,
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
        const ofLocality = { name: String(columns["site"]?.[index]), uncertainty: Number(columns["site_m"]?.[index]) };
        const widened = widenToSite(place, sites, ofLocality);
        const settled = disguises.meet({ id, source, place: widened });
        if (settled === undefined) continue;
        notes.add(id, disguiseNote(settled));
        pushPlace(rows, settled, rules);
      }
      filler.add(rows);
    },
  );
  const last = emptyRows();
  for (const settled of disguises.rest()) {
    const rules = rulesOf.get(settled.source);
    if (rules === undefined) continue;
    notes.add(settled.id, disguiseNote(settled));
    pushPlace(last, settled, rules);
  }
  filler.add(last);
  filler.done();
  notes.done();
}

function emptyRows(): Record<keyof typeof COLUMNS, Cell[]> {
  return Object.fromEntries(Object.keys(COLUMNS).map((name) => [name, []])) as unknown as Record<
    keyof typeof COLUMNS,
    Cell[]
  >;
}

function fieldsAt(columns: Record<string, unknown[]>, index: number): PlaceFields {
  return Object.fromEntries(
    PLACE_FIELDS.map((field) => [field, String(columns[field]?.[index] ?? "").trim()]),
  ) as unknown as PlaceFields;
}

function pushRefused(rows: Record<keyof typeof COLUMNS, Cell[]>, id: number, check: string): void {
  for (const name of Object.keys(COLUMNS) as (keyof typeof COLUMNS)[]) rows[name].push(null);
  rows.place_id[rows.place_id.length - 1] = id;
  rows.refused[rows.refused.length - 1] = check;
}

function pushPlace(
  rows: Record<keyof typeof COLUMNS, Cell[]>,
  { id, place, inDisguise }: SettledPlace,
  rules: PlacingRules,
): void {
  const hectad = supportedSquare(place, 10_000, rules.minimumOverlap);
  const tetrad: Support =
    hectad.code === null ? { code: null, reason: hectad.reason } : supportedSquare(place, 2_000, rules.minimumOverlap);
  const atHalf = tetrad.code === null && place.shape.kind === "circle" ? supportedSquare(place, 2_000, 0.5) : tetrad;
  const grid: GridId = place.territory.grid.id;
  const [longitude, latitude] = middleOf(place);
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
    longitude,
    latitude,
    radius_m: place.shape.kind === "circle" ? place.shape.radius : null,
    size_m: place.shape.kind === "square" ? place.shape.square.size : null,
    read_from: place.from,
    radius_from: place.radiusFrom,
    in_disguise: inDisguise,
    near_line: nearLine(place),
  };
  for (const name of Object.keys(COLUMNS) as (keyof typeof COLUMNS)[]) rows[name].push(row[name]);
}
