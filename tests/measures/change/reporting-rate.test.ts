import { mkdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Database, openDatabase } from "../../../src/engine/database.ts";
import type { SeriesPoint, Trend } from "../../../src/measures/change/trend.ts";
import type { SensitiveRow } from "../../../src/scheme/sensitive-list.ts";
import { measureRows, type PlaceRow, type RecordRow, type Rules, time } from "../judged-records.ts";

const RULES: Rules = {
  within: { a: ["ab"], b: ["ab"], ab: [], c: [], d: [], e: [] },
  periods: [
    { id: "earlier", from: 1990, to: 1999 },
    { id: "recent", from: 2000, to: 2009 },
  ],
  compared: [0, 1],
  minimumVisits: 1,
  provisionalYears: [2009],
};

let database: Database;

beforeAll(async () => {
  const spillFolder = join(tmpdir(), `atlaswright-rate-${process.pid}`);
  mkdirSync(spillFolder, { recursive: true });
  database = await openDatabase({ spillFolder, threads: 2 });
});
afterAll(() => database.close());

/** A 10 km square by number, 0 to 99, of which all visits are to one 1 km square. */
function place(number: number): PlaceRow {
  const code = String(number).padStart(2, "0");
  return {
    territory: "britain",
    grid: "british",
    hectad: `SK${code}`,
    hectad_reason: null,
    tetrad: `SK${code}A`,
    tetrad_reason: null,
    visit_place: `SK${code[0]}0${code[1]}0`,
  };
}

/** One list: the same day of the year for all, so that nothing but period, place and length differs. */
function list(
  square: number,
  year: number,
  recorder: string,
  taxa: string,
  more: Partial<RecordRow> = {},
): RecordRow[] {
  return taxa.split(" ").map((taxon_id, index) => ({
    ...place(square),
    ...time(RULES, `${year}-06-${String(1 + (year % 28)).padStart(2, "0")}`),
    taxon_id,
    present: true,
    kind_id: 0,
    recorder,
    complete: index === 0,
    status: "used" as const,
    ...more,
  }));
}

/** Every period, 25 squares and ten years with a list of each of the given kinds. */
function lists(kinds: (square: number, year: number) => readonly string[]): RecordRow[] {
  return Array.from({ length: 25 }, (_, square) =>
    Array.from({ length: 20 }, (__, year) =>
      kinds(square, 1990 + year).flatMap((taxa, index) => list(square, 1990 + year, `r${index}`, taxa)),
    ).flat(),
  ).flat();
}

async function told(
  records: readonly RecordRow[],
  set = "main",
  sensitive: readonly Partial<SensitiveRow>[] = [],
): Promise<Map<string, Trend>> {
  await measureRows(database, records, RULES, sensitive);
  const rows = await database.rows<Trend>(
    "SELECT * FROM trends WHERE method = 'reporting_rate' AND evidence_set = $set ORDER BY taxon_id",
    { set },
  );
  return new Map(rows.map((row) => [row.taxon_id, row]));
}

const points = (taxon: string, unit: string) =>
  database.rows<SeriesPoint>(
    "SELECT * FROM series WHERE method = 'reporting_rate' AND taxon_id = $taxon AND unit = $unit ORDER BY time",
    { taxon, unit },
  );

/** Of four lists a year in a square, how many name it: by turns, so that it is neither on all nor on none. */
const oneInFour = ["c a", "c", "c", "c"];
const twoInFour = ["c a", "c a", "c", "c"];

describe("lists alike but for the period", () => {
  it("give the ratio of the two shares", async () => {
    // 1 in 4 lists, then 2 in 4, at the same length, in the same squares: with season all but alike the model's rates are
    // the shares themselves, since a square's effect with balanced lists leaves the margins as they are; change + 100 %.
    const rows = await told(lists((_, year) => (year < 2000 ? oneInFour : twoInFour)));
    const a = rows.get("a");
    expect(a?.judged).toBe(true);
    expect(a?.estimate).toBeCloseTo(100, 6);
    expect(a?.n).toBe(25);
    // 2009 is provisional.
    expect([a?.n_from, a?.n_to]).toEqual([1000, 900]);
  });

  it("count a member's records for its group", async () => {
    const rows = await told(lists((_, year) => (year < 2000 ? oneInFour : ["c b", "c a", "c", "c"])));
    expect(rows.get("ab")?.estimate).toBeCloseTo(100, 6);
    expect(rows.get("a")?.estimate).toBeCloseTo(0, 6);
    expect(rows.get("b")?.reason).toBe("none of the 1000 complete lists in 1990–1999 names it");
  });
});

describe("a list that names nothing else", () => {
  it("is left out, for it would not exist without the taxon", async () => {
    const base = lists(() => oneInFour);
    const alone = Array.from({ length: 25 }, (_, square) => list(square, 2003, "alone", "a")).flat();
    const [without, withThem] = [(await told(base)).get("a"), (await told([...base, ...alone])).get("a")];
    expect(withThem).toEqual(without);
  });

  it("means, where lists of one taxon are left out, one that names but one other", async () => {
    const kinds = () => ["c d a", "c d", "c d", "c", "c a"];
    const rows = await told(lists(kinds), "without_single_species_lists");
    // Of the five lists the last two are of no use: "c" is out of the set, and so "c a" would be without a.
    expect([rows.get("a")?.n_from, rows.get("a")?.n_to]).toEqual([750, 675]);
  });
});

it("takes the visits of one recorder, day and 10 km square for one list, and others not", async () => {
  const finely = (square: number, taxa: string, recorder: string) =>
    list(square, 2003, recorder, taxa).map((row) => ({ ...row, visit_place: `${row.visit_place} ${taxa}` }));
  const base = lists(() => oneInFour);
  const more = (recorder: string) =>
    Array.from({ length: 25 }, (_, square) => [
      ...finely(square, "a", recorder),
      ...finely(square, "d", recorder),
    ]).flat();
  // One list of a and d; without a recorder two, of which that of a alone cannot count.
  const [walked, unnamed] = [await told([...base, ...more("ann")]), await told([...base, ...more("")])];
  expect([walked.get("a")?.n_to, unnamed.get("a")?.n_to]).toEqual([925, 925]);
  expect(walked.get("a")?.estimate).toBeGreaterThan(unnamed.get("a")?.estimate ?? Infinity);
  expect(walked.get("c")?.n_to).toBe((unnamed.get("c")?.n_to ?? 0) - 25);
});

describe("a list that says it is not complete, or was no list", () => {
  const base = lists(() => oneInFour);
  const more = (row: Partial<RecordRow>) =>
    Array.from({ length: 25 }, (_, square) => list(square, 2003, "more", "c d", row)).flat();

  it("counts for nothing: not declared complete, a survey for one taxon, a museum lot, not used", async () => {
    const before = (await told(base)).get("a");
    const none = [{ complete: false }, { source: "survey" }, { source: "museum" }, { status: "held" as const }];
    const after = await told([...base, ...none.flatMap((row, index) => more({ ...row, recorder: `more ${index}` }))]);
    expect(after.get("a")).toEqual(before);
  });

  it("counts where it is of a mass event, but not in the set without them", async () => {
    const records = [...base, ...more({ source: "week" })];
    expect((await told(records)).get("a")?.n_to).toBe(925);
    const [without] = await database.rows<Trend>(
      "SELECT * FROM trends WHERE method = 'reporting_rate' AND evidence_set = 'without_mass_events' AND taxon_id = 'a'",
    );
    expect(without?.n_to).toBe(900);
  });
});

describe("a newcomer with a stray find before", () => {
  // One in four lists name it from 2003 on; the stray is in a square that nobody visited since. Its year has an effect without
  // bound, since nothing ties that square to other years, and the rest is as it would be without it.
  const newcomer = lists((square, year) => {
    if (square === 24) return year > 1993 ? [] : year === 1993 ? oneInFour : ["c", "c", "c", "c"];
    return year < 2003 ? ["c", "c", "c", "c"] : oneInFour;
  });

  it("is silent for the year of the stray alone", async () => {
    await measureRows(database, newcomer, RULES);
    const years = await points("a", "year");
    expect(years.filter(({ estimate }) => estimate === null).map(({ time: year }) => year)).toEqual([1993]);
    // A balanced design: the rate is the share itself, over the squares in which it was ever recorded.
    for (const { time: year, estimate } of years.filter(({ time: of }) => of >= 2003))
      expect([year, estimate]).toEqual([year, expect.closeTo(25, 4)]);
    expect(years.find(({ time: year }) => year === 1994)?.estimate).toBe(0);
  });
});

describe("silence", () => {
  it("says in which years no list is declared complete", async () => {
    const records = lists(() => oneInFour).map((row) => ({
      ...row,
      complete: row.first_year !== null && row.first_year >= 2000 && row.complete === true,
    }));
    expect((await told(records)).get("a")?.reason).toBe("no lists declared complete in 1990–1999");
  });

  it("says how many lists name it", async () => {
    const rows = await told(
      lists((square, year) => (square < 12 && year === 1995 ? ["c a", "c", "c", "c"] : ["c", "c", "c", "c"])).concat(
        lists(() => []),
      ),
    );
    expect(rows.get("a")?.reason).toBe("12 complete lists name it; 20 are needed");
    expect(rows.get("a")?.judged).toBe(false);
  });

  it("says that its records are shown coarser than they are", async () => {
    const rows = await told(
      lists(() => oneInFour),
      "main",
      [{ taxonID: "a", level: "2 km", territories: [], castes: [], months: [] }],
    );
    expect(rows.get("a")?.reason).toContain("its lists are not complete here");
    expect(rows.get("ab")?.judged).toBe(false);
    expect(await points("a", "year")).toEqual([]);
  });
});

describe("series", () => {
  it("has each year with its rate, none with its bound, and marks the provisional", async () => {
    await told(lists((square, year) => (year === 1993 ? ["c", "c"] : year === 1995 && square > 3 ? [] : oneInFour)));
    const years = await points("a", "year");
    expect(years.map(({ time: year }) => year)).toEqual(Array.from({ length: 20 }, (_, index) => 1990 + index));
    expect(years.filter(({ provisional }) => provisional).map(({ time: year }) => year)).toEqual([2009]);
    // 1 in 4 in every year that has lists enough.
    expect(years[0]?.estimate).toBeCloseTo(25, 6);
    expect(years[19]?.estimate).toBeCloseTo(25, 6);
    // None of 25 squares: 1 − 0.025^(1/25) is 13.7 % (Clopper & Pearson's bound for 0 of 25).
    expect(years[3]).toMatchObject({ estimate: 0, low: 0, n: 50 });
    expect(years[3]?.high).toBeCloseTo(13.7185, 3);
    // Four squares with four lists each are fewer than 20.
    expect(years[5]).toMatchObject({ estimate: null, low: null, high: null, n: 16 });
  });

  it("has each period", async () => {
    await told(lists((_, year) => (year < 2000 ? oneInFour : twoInFour)));
    const [earlier, recent] = await points("a", "period");
    expect(earlier?.estimate).toBeCloseTo(25, 6);
    expect(recent?.estimate).toBeCloseTo(50, 6);
    expect(earlier?.low).toBeLessThan(25);
    expect(recent?.high).toBeGreaterThan(50);
  });
});
