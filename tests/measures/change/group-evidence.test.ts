import { mkdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Database, openDatabase } from "../../../src/engine/database.ts";
import { EVIDENCE_SETS, type EvidenceSet, laySet } from "../../../src/measures/change/evidence-sets.ts";
import { readGroup, readGroupVisits } from "../../../src/measures/change/group-evidence.ts";
import { measureLocalFrequencies } from "../../../src/measures/change/local-frequency/measure-local-frequencies.ts";
import { tellLocalFrequency } from "../../../src/measures/change/local-frequency/tell-local-frequency.ts";
import { tellRelativeChange } from "../../../src/measures/change/relative-change/tell-relative-change.ts";
import type { TrendContext } from "../../../src/measures/change/trend.ts";
import { ChangeSettings } from "../../../src/scheme/measure-settings.ts";

let database: Database;

beforeAll(async () => {
  const spillFolder = join(tmpdir(), `atlaswright-group-${process.pid}`);
  mkdirSync(spillFolder, { recursive: true });
  database = await openDatabase({ spillFolder, threads: 2 });
  await database.run(GROUP);
  await laySet(database, EVIDENCE_SETS[0] as EvidenceSet);
});
afterAll(() => database.close());

/**
 * Twelve taxa t00 to t11, of which t00 and t01 make the aggregate "agg.", in 49 squares and two periods; t11 is a newcomer.
 * Which visit finds what follows from its numbers alone.
 */
const GROUP = `
  CREATE TABLE taxon_ids AS SELECT format('t{:02}', range) AS taxon_id FROM range(12) UNION ALL SELECT 'agg.';
  CREATE TABLE closure AS SELECT taxon_id, taxon_id AS counts_for FROM taxon_ids UNION ALL VALUES ('t00', 'agg.'), ('t01', 'agg.');
  CREATE TABLE square_places AS
    SELECT 'british' AS grid, 10000 AS resolution_m, format('SK{:02}', range) AS square, (52 + 0.09 * (range % 7))::DOUBLE AS latitude,
      (-1 + 0.14 * (range // 7))::DOUBLE AS longitude FROM range(49);
  CREATE VIEW evidence AS SELECT *, true AS established, false AS provisional, false AS generalised FROM (
    SELECT v.visit, v.period, v.third, true AS present, 'british' AS grid, v.hectad, format('t{:02}', t.range) AS taxon_id
    FROM (
      SELECT (s.range * 12 + v.range)::INTEGER AS visit, format('SK{:02}', s.range) AS hectad, (v.range % 2)::INTEGER AS period,
        (12 + (v.range * 5 + s.range) % 12)::INTEGER AS third
      FROM range(49) AS s CROSS JOIN range(12) AS v
    ) AS v CROSS JOIN range(12) AS t
    WHERE (v.visit * 7919 + t.range * 104729 + v.visit * t.range * 31) % 97 < 4 + 3 * t.range AND NOT (t.range = 11 AND v.period = 0)
    UNION ALL
    SELECT NULL, 0, NULL, true, 'british', 'SK00', 't02'
    UNION ALL
    SELECT 1, 0, 15, true, 'british', 'SK00', 'agg.')`;

const IDS = ["agg.", ...Array.from({ length: 12 }, (_, at) => `t${String(at).padStart(2, "0")}`)];

function context(change: object): TrendContext {
  const scheme = {
    taxa: IDS.map((taxonID) => ({ taxonID })),
    checklist: { ancestors: (id: string) => (id === "t00" || id === "t01" ? ["agg."] : []), descendants: () => [] },
    sensitive: [],
    settings: { periods: [{ id: "then" }, { id: "now" }], change: ChangeSettings.parse(change) },
  };
  return {
    database,
    scheme: scheme as unknown as TrendContext["scheme"],
    set: EVIDENCE_SETS[0] as EvidenceSet,
    pairs: [[0, 1]],
  };
}

const SMALL = {
  relative: { minimum_taxa: 5, minimum_squares: 5 },
  local_frequency: { minimum_taxa: 10, minimum_benchmarks: 1, nearest: 20, most_similar: 10 },
};

describe("readGroup", () => {
  it("reads the taxa that are no aggregate, and the squares they were recorded in", async () => {
    const { presence, positions } = await readGroup(database, 2);
    expect(presence.taxa).toEqual(IDS.slice(1));
    expect(presence.squares).toHaveLength(49);
    expect(positions[8]).toEqual({ latitude: 52.09, longitude: -0.86 });
    const [{ counted } = { counted: -1 }] = await database.rows<{ counted: number }>(
      "SELECT count(DISTINCT (hectad, period, taxon_id)) AS counted FROM set_evidence WHERE taxon_id <> 'agg.'",
    );
    expect(presence.recorded.reduce((sum, one) => sum + one, 0)).toBe(counted);
  });

  it("reads each visit once, with its taxa", async () => {
    const { presence } = await readGroup(database, 2);
    const visits = await readGroupVisits(database, presence);
    const [counts] = await database.rows<{ visits: number; finds: number }>(
      "SELECT count(DISTINCT visit) AS visits, count(DISTINCT (visit, taxon_id)) AS finds FROM set_evidence WHERE taxon_id <> 'agg.' AND visit IS NOT NULL",
    );
    expect({ visits: visits.squares.length, finds: visits.taxa.length }).toEqual(counts);
    expect([...visits.squares]).toEqual([...visits.squares].sort((a, b) => a - b));
  });
});

describe.each([
  [
    "relative_change",
    tellRelativeChange,
    "group too small: 11 taxa with 5 squares or more in the earlier period, 40 are needed",
  ],
  ["local_frequency", tellLocalFrequency, "group too small: 12 taxa, 50 are needed"],
] as const)("%s", (method, tell, tooSmall) => {
  it("speaks of a group that is large enough, but not of aggregates and newcomers", async () => {
    const { trends } = await tell(context(SMALL));
    expect(trends.map(({ taxon_id }) => taxon_id)).toEqual(IDS);
    const of = (id: string) => trends.find(({ taxon_id }) => taxon_id === id);
    expect(of("agg.")).toMatchObject({
      judged: false,
      estimate: null,
      reason: "a group is not set against its own members",
    });
    expect(of("t11")).toMatchObject({ judged: false, estimate: null, n_from: 0 });
    expect(of("t08")).toMatchObject({ method, judged: true, reason: "", from_period: 0, to_period: 1 });
    for (const { judged, estimate, low, high } of trends) {
      expect(judged).toBe(estimate !== null);
      if (judged)
        expect((low as number) <= (estimate as number) && (estimate as number) <= (high as number)).toBe(true);
    }
  });

  it("says why it does not apply to a small group, and gives no figure", async () => {
    const { trends, series } = await tell(context({}));
    expect(series).toEqual([]);
    expect(
      trends.every(({ judged, estimate, low, high }) => !judged && estimate === null && low === null && high === null),
    ).toBe(true);
    expect(trends.find(({ taxon_id }) => taxon_id === "t05")?.reason).toBe(tooSmall);
  });
});

it("gives time factors by period in % of the earlier one", async () => {
  const { trends, series } = await tellLocalFrequency(context(SMALL));
  const told = trends.find(({ taxon_id }) => taxon_id === "t08");
  const own = series.filter(({ taxon_id }) => taxon_id === "t08");
  expect(own.map(({ time, estimate }) => [time, estimate])).toEqual([
    [0, 100],
    [1, 100 + (told?.estimate ?? 0)],
  ]);
});

it("leaves effort of squares and time factors, or nothing for a small group", async () => {
  await measureLocalFrequencies(database, context(SMALL).scheme);
  const [effort] = await database.rows(
    "SELECT count(*) AS rows, min(benchmark_share) >= 0 AND max(benchmark_share) <= 1 AS shares, min(effort_multiplier) > 0 AS above FROM square_recording_effort",
  );
  expect(effort).toEqual({ rows: 98, shares: true, above: true });
  const factors = await database.rows<{ taxon_id: string; time_factor: number; time_factor_se: number | null }>(
    "SELECT taxon_id, time_factor, time_factor_se FROM taxon_time_factors WHERE period = 0 ORDER BY taxon_id",
  );
  expect(factors.map(({ taxon_id }) => taxon_id)).toEqual(IDS.slice(1));
  expect(factors.at(-1)).toEqual({ taxon_id: "t11", time_factor: 0, time_factor_se: null });
  await measureLocalFrequencies(database, context({}).scheme);
  expect(await database.rows("SELECT * FROM square_recording_effort")).toEqual([]);
  expect(await database.rows("SELECT * FROM taxon_time_factors")).toEqual([]);
});
