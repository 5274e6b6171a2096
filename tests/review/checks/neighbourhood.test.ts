import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { type Database, openDatabase } from "../../../src/engine/database.ts";
import { neighbourhood } from "../../../src/review/checks/neighbourhood.ts";
import { makeTemporaryFolder } from "../../support/temporary-folder.ts";

let database: Database;
beforeEach(async () => {
  database = await openDatabase({ spillFolder: join(makeTemporaryFolder(), "spill") });
  // Three squares in a row: the middle one has two neighbours, the others one. Blocks of years 400 to 403.
  await database.run(
    `CREATE TABLE neighbouring_squares AS FROM (VALUES (0, 0), (0, 1), (1, 0), (1, 1), (1, 2), (2, 1), (2, 2)) AS n(square_id, other_id);
     CREATE TABLE counted AS FROM (VALUES (400), (403)) AS c(slab)`,
  );
});
afterEach(() => database.close());

// Hand computation: each sum is over the square and its neighbours, in the block of years and the two beside it.
it("sums over neighbouring squares in the same block of years and those beside it, and nothing further", async () => {
  const { cellOf, sums } = await neighbourhood(database, "counted");
  const cells = [
    { at: cellOf(0, 400), records: 5 },
    { at: cellOf(1, 401), records: 7 },
    { at: cellOf(2, 403), records: 11 },
  ];
  const around = sums(cells, ({ records }) => records);
  const rows = [0, 1, 2].map((square) => [400, 401, 402, 403].map((slab) => around[cellOf(square, slab)]));
  expect(rows).toEqual([
    [12, 12, 7, 0],
    [12, 12, 18, 11],
    [7, 7, 18, 11],
  ]);
});
