import type { Database } from "../../src/engine/database.ts";
import { sqlBeside } from "../../src/engine/database.ts";
import { isRefusal } from "../../src/grids/grid.ts";
import { placingTerritories } from "../../src/records/record-stage.ts";
import { gapBetween } from "../../src/review/distance.ts";
import type { Scheme } from "../../src/scheme/scheme.ts";

/** One kind of error: how many were put in, leave a trace, and were found. */
export interface KnownErrorRow {
  kind: string;
  injected: number;
  detectable: number;
  caught: number;
  /** Found though they leave none of the traces: by luck, or by a trace nobody thought of. */
  caught_without_trace: number;
  checks: string;
}

/** What the checks find of the demonstration's known errors, and how many sound records they ask about. */
export interface KnownErrors {
  table: KnownErrorRow[];
  /** Sound records asked about or held, by check; "any check" first. */
  sound: { check_name: string; records: number }[];
  /** Sound records in all. */
  soundRecords: number;
}

/** Sets the findings of a reviewed demonstration against what was put into it. */
export async function knownErrors(database: Database, scheme: Scheme): Promise<KnownErrors> {
  await layHectads(database, scheme);
  await layLand(database, scheme);
  await database.run(sqlBeside(import.meta.url, "traces.sql").replace("{gap}", gapBetween("s", "p")));
  await database.run(sqlBeside(import.meta.url, "table.sql"));
  const [counted] = await database.rows<{ sound: number }>(
    `SELECT (SELECT count(*) FROM true_rows) - (SELECT count(*) FROM spoilt WHERE kind NOT LIKE '%-in-remarks') AS sound`,
  );
  return {
    table: await database.rows<KnownErrorRow>("SELECT * FROM known_error_table"),
    sound: await database.rows("SELECT * FROM sound_asked"),
    soundRecords: counted?.sound ?? 0,
  };
}

/** Where the 10 km squares of the truth and of the records lie, in squares from the grid's origin. */
async function layHectads(database: Database, scheme: Scheme): Promise<void> {
  const gridOf = new Map(placingTerritories(scheme).map(({ id, grid }) => [id, grid]));
  const squares = await database.rows<{ territory: string; hectad: string }>(
    `SELECT territory, hectad FROM true_squares UNION SELECT territory, hectad FROM places WHERE hectad IS NOT NULL ORDER BY ALL`,
  );
  const placed = squares.flatMap(({ territory, hectad }) => {
    const square = gridOf.get(territory)?.parse(hectad);
    return square === undefined || isRefusal(square)
      ? []
      : [{ territory, hectad, x: square.easting / 10_000, y: square.northing / 10_000 }];
  });
  const filler = await database.fill("hectad_places", {
    territory: "text",
    hectad: "text",
    x: "integer",
    y: "integer",
  });
  filler.add({
    territory: placed.map(({ territory }) => territory),
    hectad: placed.map(({ hectad }) => hectad),
    x: placed.map(({ x }) => x),
    y: placed.map(({ y }) => y),
  });
  filler.done();
}

/** The land the demonstration's bees live on. */
async function layLand(database: Database, { landSquares }: Scheme): Promise<void> {
  const squares = landSquares ?? [];
  const filler = await database.fill("truly_land", { grid: "text", hectad: "text", letters: "text" });
  filler.add({
    grid: squares.map(({ grid }) => grid),
    hectad: squares.map(({ hectad }) => hectad),
    letters: squares.map(({ tetrads }) => tetrads),
  });
  filler.done();
}
