import { join } from "node:path";
import { expect, test } from "vitest";
import { openDatabase } from "../../src/engine/database.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

test("a query is read to its end while what it gives is written: 300,000 rows in, 300,000 out", async () => {
  const database = await openDatabase({ spillFolder: join(makeTemporaryFolder(), "spill") });
  const filler = await database.fill("doubled", { number: "integer" });
  await database.batches("SELECT range AS number FROM range(300000)", (columns) => {
    filler.add({ number: (columns["number"] ?? []).map((number) => 2 * Number(number)) });
  });
  filler.done();
  const [row] = await database.rows<{ rows: number; sum: number }>(
    "SELECT count(*) AS rows, sum(number)::BIGINT AS sum FROM doubled",
  );
  database.close();
  // The sum of 0 to n − 1, doubled, is n(n − 1).
  expect(row).toEqual({ rows: 300_000, sum: 300_000 * 299_999 });
});
