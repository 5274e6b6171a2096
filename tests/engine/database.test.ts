import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { type Database, openDatabase, sqlPath, sqlText } from "../../src/engine/database.ts";
import { openTables, saveTables } from "../../src/engine/saved-tables.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

async function open(options: { memory?: string } = {}): Promise<Database> {
  const database = await openDatabase({ spillFolder: join(makeTemporaryFolder(), "spill"), threads: 2, ...options });
  onTestFinished(() => database.close());
  return database;
}

describe("the database", () => {
  it("gives rows as plain values: whole numbers as numbers, dates and decimals as text, lists as lists", async () => {
    const database = await open();
    expect(
      await database.rows(
        "SELECT 12345678901 AS big, DATE '2024-02-29' AS day, 1.5::DOUBLE AS real, NULL AS nothing, ['a', 'b'] AS list, true AS yes",
      ),
    ).toEqual([{ big: 12_345_678_901, day: "2024-02-29", real: 1.5, nothing: null, list: ["a", "b"], yes: true }]);
  });

  it("takes values by name, whatever they hold", async () => {
    const database = await open();
    const text = "'; DROP TABLE x; -- \" 🐝 שלום";
    expect(await database.rows("SELECT $text AS text, $number AS number", { text, number: 7 })).toEqual([
      { text, number: 7 },
    ]);
    expect(await database.rows(`SELECT ${sqlText(text)} AS text`)).toEqual([{ text }]);
  });

  it("reads the file a path names, not those it would fit as a pattern, and no statement is cut short", async () => {
    const database = await open();
    const folder = join(makeTemporaryFolder(), "[a] of {b,c}");
    mkdirSync(folder);
    for (const [name, value] of [
      ["walks[1].csv", 1],
      ["walks1.csv", 2],
      ["wa*s?.csv", 3],
    ] as const)
      writeFileSync(join(folder, name), `a\n${value}\n`);
    for (const [name, a] of [
      ["walks[1].csv", 1],
      ["walks1.csv", 2],
      ["wa*s?.csv", 3],
    ] as const)
      expect(await database.rows(`SELECT a::INTEGER AS a FROM read_csv(${sqlPath(join(folder, name))})`)).toEqual([
        { a },
      ]);
    await database.run("CREATE TABLE kept AS SELECT 1 AS a");
    await saveTables(database, folder, ["kept"]);
    await database.run("DROP TABLE kept");
    await openTables(database, folder, ["kept"]);
    expect(await database.rows("SELECT a FROM kept")).toEqual([{ a: 1 }]);
    expect(await database.rows(`SELECT ${sqlText("a\0'b")} AS text`)).toEqual([{ text: "a\uFFFD'b" }]);
  });

  it("fills a table column by column, in batches of any size, and gives it back in order", async () => {
    const database = await open();
    const filler = await database.fill("numbers", { id: "integer", name: "text", share: "double", even: "boolean" });
    const ids = Array.from({ length: 5000 }, (_, id) => id);
    filler.add({
      id: ids,
      name: ids.map((id) => (id % 7 === 0 ? null : `n${id}`)),
      share: ids.map((id) => id / 2),
      even: ids.map((id) => id % 2 === 0),
    });
    filler.add({ id: [], name: [], share: [], even: [] });
    filler.add({ id: [5000], name: ["last"], share: [null], even: [null] });
    filler.done();
    const seen: number[] = [];
    let batches = 0;
    await database.batches("SELECT id, name FROM numbers ORDER BY id", (columns, size) => {
      batches += 1;
      expect(columns["name"]).toHaveLength(size);
      seen.push(...(columns["id"] as number[]));
    });
    expect(seen).toEqual([...ids, 5000]);
    expect(batches).toBeGreaterThan(1);
    expect(await database.rows("SELECT count(name) AS names, sum(even::INTEGER) AS evens FROM numbers")).toEqual([
      { names: 5001 - 715, evens: 2500 },
    ]);
  });

  it("reads a query to its end while what it gives is written: 300,000 rows in, 300,000 out", async () => {
    const database = await open();
    const filler = await database.fill("doubled", { number: "integer" });
    await database.batches("SELECT range AS number FROM range(300000)", (columns) => {
      filler.add({ number: (columns["number"] ?? []).map((number) => 2 * Number(number)) });
    });
    filler.done();
    const [row] = await database.rows<{ rows: number; sum: number }>(
      "SELECT count(*) AS rows, sum(number)::BIGINT AS sum FROM doubled",
    );
    // The sum of 0 to n − 1, doubled, is n(n − 1).
    expect(row).toEqual({ rows: 300_000, sum: 300_000 * 299_999 });
  });

  it("keeps to its memory by writing what does not fit to its folder", async () => {
    const database = await open({ memory: "60MB" });
    const [row] = await database.rows<{ rows: number }>(
      "SELECT count(*) AS rows FROM (SELECT md5(range::VARCHAR) AS m, range FROM range(600000) ORDER BY m LIMIT 590000)",
    );
    expect(row?.rows).toBe(590_000);
  });

  it("throws what is wrong with a statement", async () => {
    const database = await open();
    await expect(database.run("SELEC 1")).rejects.toThrow(/syntax error/);
  });

  it("saves tables and opens them again as views", async () => {
    const folder = join(makeTemporaryFolder(), "it's a folder");
    mkdirSync(folder);
    const first = await open();
    await first.run("CREATE TABLE bees AS SELECT 'Bombus' AS genus, 3 AS many");
    await saveTables(first, folder, ["bees"]);
    const second = await open();
    await openTables(second, folder, ["bees"]);
    expect(await second.rows("SELECT * FROM bees")).toEqual([{ genus: "Bombus", many: 3 }]);
  });
});
