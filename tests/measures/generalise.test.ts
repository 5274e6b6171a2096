import { mkdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Database, openDatabase } from "../../src/engine/database.ts";
import { MEASURE_TABLES } from "../../src/measures/measure-stage.ts";
import type { SensitiveRow } from "../../src/scheme/sensitive-list.ts";
import { anyRecords, anyRules, measureRows, PLACES, type RecordRow, type Rules, time } from "./judged-records.ts";

// The law is design, not measurement: what is made from the generalised copy alone cannot tell two records apart that
// are one there. A reader of the tables then learns no more of a place than the list allows, whatever is computed.

let database: Database;

beforeAll(async () => {
  const spillFolder = join(tmpdir(), `atlaswright-generalise-${process.pid}`);
  mkdirSync(spillFolder, { recursive: true });
  database = await openDatabase({ spillFolder, threads: 2 });
});
afterAll(() => database.close());

type Entry = Partial<SensitiveRow>;
const entry = (taxonID: string, level: SensitiveRow["level"], scope: Entry = {}): Entry => ({
  taxonID,
  level,
  territories: [],
  castes: [],
  months: [],
  ...scope,
});

/** Every row of every table the measures leave for publishing. */
async function everything(records: readonly RecordRow[], rules: Rules, sensitive: readonly Entry[]): Promise<string[]> {
  await measureRows(database, records, rules, sensitive);
  const tables = MEASURE_TABLES.filter((table) => table !== "generalised");
  const rows = await Promise.all(
    tables.map(async (table) =>
      (await database.rows<object>(`SELECT * FROM ${table}`)).map((row) => `${table} ${JSON.stringify(row)}`).sort(),
    ),
  );
  return rows.flat();
}

/** Places a record of a level may be moved to without a reader noticing. */
function alike({ grid, hectad, tetrad }: RecordRow, level: SensitiveRow["level"]): typeof PLACES {
  return PLACES.filter((place) => {
    if (level === "withheld") return true;
    if (place.grid !== grid || place.hectad !== hectad || hectad === null) return false;
    return level === "10 km" || (place.tetrad === tetrad && tetrad !== null);
  });
}

describe("generalise", () => {
  for (const level of ["2 km", "10 km", "withheld"] as const)
    it(`tells nobody where a record was within what ${level} shows of it`, async () => {
      const input = anyRules.chain((rules) =>
        fc.tuple(fc.constant(rules), anyRecords(rules, 60), fc.infiniteStream(fc.nat(7))),
      );
      await fc.assert(
        fc.asyncProperty(input, async ([rules, records, picks]) => {
          const moved = records.map((record): RecordRow => {
            const places = record.taxon_id === "a" ? alike(record, level) : [];
            const pick = picks.next().value as number;
            return { ...record, ...places[pick % Math.max(1, places.length)] };
          });
          const list = [entry("a", level)];
          expect(await everything(moved, rules, list)).toEqual(await everything(records, rules, list));
        }),
        { numRuns: 8 },
      );
    });

  const rules: Rules = {
    within: { a: ["ab"], b: ["ab"], ab: [], c: [] },
    periods: [
      { id: "earlier", from: 1990, to: 2005 },
      { id: "recent", from: 2006, to: 2020 },
    ],
    compared: [0, 1],
    minimumVisits: 1,
  };
  const [atA, , atZ] = PLACES;
  const record = (
    taxon_id: string,
    place: (typeof PLACES)[number] | undefined,
    more: Partial<RecordRow> = {},
  ): RecordRow => ({
    ...(place as (typeof PLACES)[number]),
    ...time(rules, "2013-05-31"),
    taxon_id,
    present: true,
    kind_id: 0,
    recorder: "ann",
    status: "used",
    ...more,
  });
  const squares = async (taxon: string) =>
    (
      await database.rows<{ square: string }>(
        `SELECT square FROM taxon_squares WHERE taxon_id = '${taxon}' ORDER BY square`,
      )
    ).map(({ square }) => square);

  it("would be noticed if it did not: without a list the same move changes the tables", async () => {
    const at = (place: (typeof PLACES)[number] | undefined) => everything([record("a", place)], rules, []);
    expect(await at(atZ)).not.toEqual(await at(atA));
  });

  it("hides the 2 km square from the taxon, from the group above it and from effort", async () => {
    await measureRows(database, [record("a", atZ), record("b", atA)], rules, [entry("a", "10 km")]);
    expect(await squares("a")).toEqual(["SK12"]);
    expect(await squares("ab")).toEqual(["SK12", "SK12A"]);
    expect(await database.rows("SELECT square FROM square_effort WHERE resolution_m = 2000")).toEqual([
      { square: "SK12A" },
    ]);
  });

  it("tells of a square in two territories nothing by the one it is counted in", async () => {
    const list = [entry("a", "10 km")];
    const man = PLACES.find(({ territory }) => territory === "man");
    expect(await everything([record("a", man)], rules, list)).toEqual(
      await everything([record("a", atZ)], rules, list),
    );
  });

  it("tells nothing by the visit a record was part of", async () => {
    const list = [entry("a", "10 km")];
    const walk = record("c", atA);
    expect(await everything([walk, record("a", atA)], rules, list)).toEqual(
      await everything([walk, record("a", atZ)], rules, list),
    );
  });

  it("hides the places of members where the group is listed, and the non-detections of a survey", async () => {
    await measureRows(database, [record("b", atZ), record("a", atA, { present: false })], rules, [
      entry("ab", "withheld"),
    ]);
    expect(await squares("b")).toEqual([]);
    expect(await database.rows("SELECT square FROM square_effort")).toEqual([]);
    expect(await database.rows("SELECT records, hectads FROM taxon_totals WHERE taxon_id = 'b'")).toEqual([
      { records: 1, hectads: 0 },
    ]);
    expect(await database.rows("SELECT DISTINCT reason FROM off_map")).toEqual([{ reason: "place withheld" }]);
  });

  it("covers no square for another species by a visit that may be counted already", async () => {
    await measureRows(database, [record("a", atA), record("c", atA)], rules, [entry("a", "10 km")]);
    expect(await database.rows("SELECT taxon_id, square FROM taxon_coverage WHERE period = 1")).toEqual([
      { taxon_id: "a", square: "SK12" },
      { taxon_id: "ab", square: "SK12" },
    ]);
  });

  it("takes the coarsest entry that applies, by territory, caste and month", async () => {
    const list = [
      entry("a", "2 km"),
      entry("a", "10 km", { territories: ["britain"], months: [6, 7] }),
      entry("a", "withheld", { castes: ["male"] }),
    ];
    const shown = async (more: Partial<RecordRow>) => {
      await measureRows(database, [record("a", atZ, more)], rules, list);
      return squares("a");
    };
    const may = { ...time(rules, "2013-05-01", "2013-05-31") };
    const spring = { ...time(rules, "2013-04-01", "2013-06-01") };
    const winter = { ...time(rules, "2013-11-01", "2014-02-01") };
    const yearAndDay = { ...time(rules, "2012-08-15", "2013-08-15") };
    expect(await shown(may)).toEqual(["SK12", "SK12Z"]);
    expect(await shown(spring)).toEqual(["SK12"]);
    expect(await shown(winter)).toEqual(["SK12", "SK12Z"]);
    expect(await shown(yearAndDay)).toEqual(["SK12"]);
    expect(await shown({ ...time(rules, null, "2013-05-31") })).toEqual(["SK12"]);
    expect(await shown({ ...time(rules, "2013-06-02"), territory: "man" })).toEqual(["SK12", "SK12Z"]);
    expect(await shown({ kind_id: 3 })).toEqual([]);
    expect(await shown({ kind_id: 2 })).toEqual(["SK12", "SK12Z"]);
  });
});
