import { mkdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { measureInvented } from "../../scripts/truth/judged.ts";
import { inventTrial } from "../../scripts/truth/run.ts";
import { openDatabase } from "../../src/engine/database.ts";
import { MEASURE_TABLES } from "../../src/measures/measure-stage.ts";

const { country, group, records } = inventTrial({ scenario: "changing", seed: 11, species: 60, visits: 20_000 });

/** Every row of every table, as text, sorted: the order of rows is the business of who reads them. */
async function everything(threads: number): Promise<string[]> {
  const spillFolder = join(tmpdir(), `atlaswright-threads-${process.pid}-${threads}`);
  mkdirSync(spillFolder, { recursive: true });
  const database = await openDatabase({ spillFolder, threads });
  try {
    await measureInvented(
      database,
      country,
      records,
      group.map(({ taxonId }) => taxonId),
    );
    const rows: string[] = [];
    for (const table of MEASURE_TABLES) {
      const own = await database.rows<object>(`SELECT * FROM ${table}`);
      rows.push(...own.map((row) => `${table} ${JSON.stringify(row)}`).sort());
    }
    return rows;
  } finally {
    database.close();
  }
}

describe("measures", () => {
  // More records than the engine leaves to one thread, which are 122,880.
  it("give the same figures to the last bit on one thread and on several", async () => {
    const one = await everything(1);
    expect(one.length).toBeGreaterThan(10_000);
    expect(records.length).toBeGreaterThan(122_880);
    const several = await everything(5);
    expect(several.filter((row, index) => row !== one[index]).slice(0, 5)).toEqual([]);
    expect(several).toHaveLength(one.length);
  });
});
