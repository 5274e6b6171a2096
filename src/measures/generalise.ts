import { type Database, sqlBeside } from "../engine/database.ts";
import { isRefusal } from "../grids/grid.ts";
import { centreOf } from "../grids/squares.ts";
import { type CasteVocabulary, widerThan } from "../names/caste-classes.ts";
import type { PlacingTerritory } from "../records/place.ts";
import { casteVocabulary } from "../scheme/caste-vocabulary.ts";
import { taxaOfEntry } from "../scheme/generalisations.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { LEVELS, type SensitiveRow } from "../scheme/sensitive-list.ts";

/** What generalising reads of a scheme. */
export type ListedScheme = Pick<Scheme, "sensitive" | "checklist" | "settings" | "landSquares">;

/**
 * Makes the copy of the records that everything published is made from: the view `public_records`. Records of listed
 * taxa are generalised in it, never moved at random, and nothing is changed in the records themselves.
 *
 * @param territories of the scheme, in its order
 */
export async function generalise(
  database: Database,
  scheme: ListedScheme,
  territories: readonly PlacingTerritory[],
): Promise<void> {
  await fillScopes(database, scheme);
  await fillSmallHectads(database, scheme);
  const [tables = "", view = ""] = sqlBeside(import.meta.url, "public-records.sql").split(/(?=CREATE OR REPLACE VIEW)/);
  await database.run(tables);
  await fillSquares(database, territories);
  await database.run(view);
}

async function fillSmallHectads(database: Database, { landSquares }: ListedScheme): Promise<void> {
  const small = (landSquares ?? []).filter(({ tetrads }) => tetrads.length <= 1);
  const filler = await database.fill("small_hectads", { grid: "text", hectad: "text" });
  filler.add({ grid: small.map(({ grid }) => grid), hectad: small.map(({ hectad }) => hectad) });
  filler.done();
}

/** One row for each taxon, territory, caste and month of each entry. */
async function fillScopes(database: Database, { sensitive, checklist, settings }: ListedScheme): Promise<void> {
  const vocabulary = sensitive.some(({ castes }) => castes.length > 0) ? casteVocabulary(settings) : { classes: [] };
  const rows = sensitive.flatMap((entry) =>
    taxaOfEntry(entry, checklist).flatMap((taxon) =>
      orAll(entry.territories, "").flatMap((territory) =>
        orAll(castesOf(entry, vocabulary), "").flatMap((caste) =>
          orAll(entry.months, 0).map((month) => ({
            taxon,
            coarseness: LEVELS.indexOf(entry.level) + 1,
            territory,
            caste,
            month,
          })),
        ),
      ),
    ),
  );
  const filler = await database.fill("sensitive_scopes", {
    taxon_id: "text",
    coarseness: "integer",
    territory: "text",
    caste: "text",
    month: "integer",
  });
  filler.add({
    taxon_id: rows.map(({ taxon }) => taxon),
    coarseness: rows.map(({ coarseness }) => coarseness),
    territory: rows.map(({ territory }) => territory),
    caste: rows.map(({ caste }) => caste),
    month: rows.map(({ month }) => month),
  });
  filler.done();
}

function orAll<T>(values: readonly T[], all: T): readonly T[] {
  return values.length === 0 ? [all] : values;
}

/** Castes an entry is about: those it names and every narrower class, since a queen is a female too. */
function castesOf({ castes }: SensitiveRow, vocabulary: Pick<CasteVocabulary, "classes">): string[] {
  const narrower = vocabulary.classes
    .map(({ id }) => id)
    .filter((id) => widerThan(id, { ...vocabulary, ignored: [] }).some((wider) => castes.includes(wider)));
  return [...new Set([...castes, ...narrower])];
}

/**
 * The territory of every square that a record was generalised to: the one that holds its centre, else the first of its
 * grid. It depends on the square alone, for in a square of two territories a record's own would tell in which part it was.
 */
async function fillSquares(database: Database, territories: readonly PlacingTerritory[]): Promise<void> {
  const squares = await database.rows<{ grid: string; square: string }>(
    "SELECT DISTINCT grid, square FROM generalised WHERE square IS NOT NULL ORDER BY grid, square",
  );
  const filler = await database.fill("generalised_squares", { grid: "text", square: "text", territory: "text" });
  filler.add({
    grid: squares.map(({ grid }) => grid),
    square: squares.map(({ square }) => square),
    territory: squares.map(({ grid, square }) => territoryOfSquare(grid, square, territories)),
  });
  filler.done();
}

function territoryOfSquare(gridId: string, square: string, territories: readonly PlacingTerritory[]): string {
  const ofGrid = territories.filter(({ grid }) => grid.id === gridId);
  const [first] = ofGrid;
  const parsed = first?.grid.parse(square);
  if (first === undefined || parsed === undefined || isRefusal(parsed))
    throw new Error(`square ${square} is in no territory of the ${gridId} grid`);
  if (ofGrid.length === 1) return first.id;
  const centre = first.grid.unproject(centreOf(parsed));
  return (ofGrid.find(({ holds }) => holds(...centre)) ?? first).id;
}
