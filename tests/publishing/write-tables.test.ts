import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openDatabase } from "../../src/engine/database.ts";
import type { PublishedTable } from "../../src/publishing/published-tables.ts";
import { writeTable } from "../../src/publishing/write-tables.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

/** More rows than the engine keeps together on one thread (122,880), in an order that is not theirs. */
const LARGE: PublishedTable = {
  name: "large",
  title: "",
  description: "",
  fields: [
    { name: "code", type: "string", description: "" },
    { name: "number", type: "integer", description: "" },
  ],
  primaryKey: ["code"],
  foreignKeys: [],
  query: "SELECT printf('%07d', (range * 7919) % 300007) AS code, range::INTEGER AS number FROM range(300007)",
};

async function written(threads: number): Promise<{ csv: Buffer; parquet: Buffer }> {
  const folder = makeTemporaryFolder();
  const database = await openDatabase({ spillFolder: join(folder, "spill"), threads });
  await writeTable(database, LARGE, { folder, invented: true });
  database.close();
  return { csv: readFileSync(join(folder, "large.csv")), parquet: readFileSync(join(folder, "large.parquet")) };
}

describe("writeTable", () => {
  it("writes a large table sorted, the same bytes on one thread and on several", async () => {
    const [one, two, four] = [await written(1), await written(2), await written(4)];
    const codes = one.csv
      .toString("utf8")
      .trimEnd()
      .split("\n")
      .slice(1)
      .map((row) => row.slice(0, 7));
    expect(codes.length).toBe(300_007);
    expect(codes.every((code, index) => code === String(index).padStart(7, "0"))).toBe(true);
    for (const other of [two, four]) {
      expect(other.csv.equals(one.csv)).toBe(true);
      expect(other.parquet.equals(one.parquet)).toBe(true);
    }
  });
});
