import { mkdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Database, openDatabase } from "../../../src/engine/database.ts";
import { tellRichness } from "../../../src/measures/coverage/square-richness.ts";
import { measureRows, PLACES, type PlaceRow, type RecordRow, type Rules, time } from "../judged-records.ts";

const SAMPLE = { visits: 10, observed: 4, once: 1, twice: 1, incidences: 10 };

describe("tellRichness", () => {
  it("is silent below the number of visits, and says how many are needed", () => {
    expect(tellRichness({ ...SAMPLE, visits: 4 }, 0, 5)).toMatchObject({
      judged: false,
      reason: "4 visits; 5 are needed",
      ...{ expected: null, low: null, high: null, completeness: null, sample_coverage: null },
    });
    expect(tellRichness({ ...SAMPLE, visits: 1 }, 0, 5).reason).toBe("1 visit; 5 are needed");
  });

  it("tells what is expected with and without taxa of a single record", () => {
    // By hand: 4 + 0.9 × 1/2 = 4.45; coverage 1 − 1/10 × 9/(9 + 2); without the one taxon nothing is unseen.
    const told = tellRichness(SAMPLE, 1, 5);
    expect(told.expected).toBeCloseTo(4.45, 12);
    expect(told.completeness).toBeCloseTo(4 / 4.45, 12);
    expect(told.sample_coverage).toBeCloseTo(1 - 9 / 110, 12);
    expect(told).toMatchObject({ expected_without_single_records: 3, completeness_without_single_records: 1 });
    expect(told).toMatchObject({ judged: true, reason: "" });
  });

  it("has nothing to say without single records where no other taxon is left", () => {
    const told = tellRichness({ visits: 6, observed: 2, once: 2, twice: 0, incidences: 2 }, 2, 5);
    expect(told).toMatchObject({ expected_without_single_records: null, completeness_without_single_records: null });
  });
});

describe("square_richness, worked by hand", () => {
  let database: Database;
  beforeAll(async () => {
    const spillFolder = join(tmpdir(), `atlaswright-richness-${process.pid}`);
    mkdirSync(spillFolder, { recursive: true });
    database = await openDatabase({ spillFolder, threads: 2 });
  });
  afterAll(() => database.close());

  const rules: Rules = {
    within: { lucorum: ["white-tailed"], terrestris: ["white-tailed"], "white-tailed": [], pascuorum: [] },
    periods: [{ id: "recent", from: 2006, to: 2020 }],
    compared: null,
    minimumVisits: 2,
  };
  const found = (taxon_id: string, day: number, more: Partial<RecordRow> = {}): RecordRow => ({
    ...(PLACES[0] as PlaceRow),
    ...time(rules, `2010-06-0${day}`),
    ...{ taxon_id, present: true, kind_id: 0, recorder: "ann", status: "used" },
    ...more,
  });
  const told = async (records: RecordRow[]) => {
    await measureRows(database, records, rules);
    const [row] = await database.rows<{ visits: number; observed: number; single_records: number; expected: number }>(
      "SELECT visits, observed, single_records, expected FROM square_richness WHERE resolution_m = 10000 AND span = 0",
    );
    return row;
  };

  it("sets a group aside where a member was recorded, and counts it where none was", async () => {
    const group = [1, 2, 3].map((day) => found("white-tailed", day));
    expect(await told([...group, found("pascuorum", 4)])).toMatchObject({ visits: 4, observed: 2 });
    // pascuorum and lucorum once, nothing twice, on five visits: 2 + 4/5 × 2 × 1 / 2 = 2.8.
    const withMember = await told([...group, found("pascuorum", 4), found("lucorum", 5)]);
    expect(withMember).toMatchObject({ visits: 5, observed: 2, single_records: 2 });
    expect(withMember?.expected).toBeCloseTo(2.8, 12);
  });

  it("takes two records of one visit for one incidence, and not for a single record", async () => {
    const queen = found("lucorum", 1);
    const worker = found("lucorum", 1, { kind_id: 1 });
    expect(await told([queen, worker, found("pascuorum", 1), found("pascuorum", 2)])).toMatchObject({
      ...{ visits: 2, observed: 2, single_records: 0 },
      expected: 2 + ((1 / 2) * 1) / 2,
    });
  });

  it("takes no survey, museum lot, non-detection, vague date or what is not established for a sample", async () => {
    const none = [
      found("lucorum", 3, { source: "survey" }),
      found("lucorum", 4, { source: "museum" }),
      found("lucorum", 5, { present: false }),
      found("lucorum", 6, { established: false }),
      { ...found("lucorum", 7), ...time(rules, "2010-06-07", "2010-06-09") },
    ];
    expect(await told([found("pascuorum", 1), found("pascuorum", 2), ...none])).toMatchObject({
      visits: 2,
      observed: 1,
    });
  });
});
