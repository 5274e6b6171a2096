import { type Database, sqlBeside } from "../../engine/database.ts";
import type { GroupVisits } from "./local-frequency/equal-effort.ts";
import type { Position } from "./local-frequency/neighbourhoods.ts";
import type { Presence } from "./presence.ts";

/** What a set of evidence says of the taxa of a group at 10 km. */
export interface GroupEvidence {
  presence: Presence;
  /** Centres of the squares, in their order. */
  positions: Position[];
}

/**
 * Reads the group from the view `set_evidence`: listed taxa that are no aggregate of others and were recorded in some
 * square and period. Lays the tables that `readGroupVisits` reads.
 *
 * @param periods number of periods of the atlas
 * @example (await readGroup(database, 2)).presence.taxa.length // => 80
 */
export async function readGroup(database: Database, periods: number): Promise<GroupEvidence> {
  await database.run(sqlBeside(import.meta.url, "group-evidence.sql"));
  const taxa = await database.rows<{ taxon_id: string }>(
    "SELECT DISTINCT taxon_id FROM group_squares ORDER BY taxon_id",
  );
  const places = await database.rows<Position & { square: string }>("SELECT * FROM group_places ORDER BY square");
  const presence: Presence = {
    taxa: taxa.map(({ taxon_id }) => taxon_id),
    squares: places.map(({ square }) => square),
    periods,
    recorded: new Uint8Array(periods * places.length * taxa.length),
  };
  const [taxonAt, squareAt] = [positionsOf(presence.taxa), positionsOf(presence.squares)];
  await database.batches("SELECT square, period, taxon_id FROM group_squares", (columns, size) => {
    for (let row = 0; row < size; row++) {
      const square = squareAt.get(columns["square"]?.[row] as string);
      const taxon = taxonAt.get(columns["taxon_id"]?.[row] as string);
      if (square === undefined || taxon === undefined) continue;
      const period = Number(columns["period"]?.[row]);
      presence.recorded[(period * places.length + square) * taxa.length + taxon] = 1;
    }
  });
  return { presence, positions: places.map(({ latitude, longitude }) => ({ latitude, longitude })) };
}

/**
 * Reads the visits that recorded a taxon of the group, in the order of squares. Needs `readGroup` on the same set before.
 *
 * @example (await readGroupVisits(database, presence)).squares.length // => 12000
 */
export async function readGroupVisits(database: Database, { taxa, squares }: Presence): Promise<GroupVisits> {
  const [taxonAt, squareAt] = [positionsOf(taxa), positionsOf(squares)];
  const columns = { squares: [] as number[], periods: [] as number[], thirds: [] as number[], starts: [] as number[] };
  const found: number[] = [];
  let [visitBefore, squareBefore] = [-1, -1];
  const read = "SELECT visit, square, period, third, taxon_id FROM group_visits ORDER BY square, visit, taxon_id";
  await database.batches(read, (batch, size) => {
    for (let row = 0; row < size; row++) {
      const square = squareAt.get(batch["square"]?.[row] as string);
      const taxon = taxonAt.get(batch["taxon_id"]?.[row] as string);
      if (square === undefined || taxon === undefined) continue;
      const visit = Number(batch["visit"]?.[row]);
      if (visit !== visitBefore || square !== squareBefore) {
        columns.squares.push(square);
        columns.periods.push(Number(batch["period"]?.[row]));
        columns.thirds.push(Number(batch["third"]?.[row]));
        columns.starts.push(found.length);
      }
      found.push(taxon);
      [visitBefore, squareBefore] = [visit, square];
    }
  });
  return {
    squares: Int32Array.from(columns.squares),
    periods: Uint8Array.from(columns.periods),
    thirds: Uint8Array.from(columns.thirds),
    starts: Int32Array.from([...columns.starts, found.length]),
    taxa: Int32Array.from(found),
  };
}

function positionsOf(names: readonly string[]): Map<string, number> {
  return new Map(names.map((name, index) => [name, index]));
}
