import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { inventTrial, runTrial, type TrialResult } from "../../scripts/truth/run.ts";
import { REAL_CHANGES, SCENARIOS } from "../../scripts/truth/scenarios.ts";
import { type Performance, summarise } from "../../scripts/truth/summary.ts";
import { TABLE } from "../../scripts/truth/write-table.ts";
import { claimsOf } from "../../src/publishing/claims.ts";
import { knownTruthFile } from "../../src/publishing/known-truth-file.ts";

const SMALL = { seed: 3, species: 60, visits: 2500 } as const;
const folder = mkdtempSync(join(tmpdir(), "truth-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (scenario: string) => runTrial({ ...SMALL, scenario }, join(folder, "spill"));
const of = (results: TrialResult[], method: string): Performance => {
  const found = summarise(results).find((row) => row.method === method);
  if (found === undefined) throw new Error(`no verdicts of ${method}`);
  return found;
};

describe("an invented group", () => {
  it("is the same for the same seed, to the last record, and another for another", () => {
    const bytes = (seed: number) => JSON.stringify(inventTrial({ ...SMALL, seed, scenario: "changing" }).records);
    const first = bytes(3);
    expect(bytes(3)).toBe(first);
    expect(bytes(4)).not.toBe(first);
  });

  it("lives in the very same squares in both periods where no species changes", () => {
    for (const scenario of ["still", "all_three"]) {
      for (const { lived, hectads, encounters } of inventTrial({ ...SMALL, scenario }).homes) {
        expect(lived[1]).toEqual(lived[0]);
        expect(hectads[1]).toBe(hectads[0]);
        expect(encounters[1]).toBe(encounters[0]);
      }
    }
  });

  it("changes by what it says it does, each change in a fifth of the species", () => {
    const { homes } = inventTrial({ ...SMALL, scenario: "changing" });
    for (const change of REAL_CHANGES) expect(homes.filter((home) => home.change === change)).toHaveLength(12);
    for (const { change, tetrads, lived } of homes) {
      expect(lived.map(({ length }) => length)).toEqual(tetrads);
      expect(tetrads[1]).toBe(Math.round(tetrads[0] * change));
    }
  });

  it("is recorded only where it lives", () => {
    const { homes, records } = inventTrial({ ...SMALL, scenario: "changing" });
    const lived = homes.map((home) => home.lived.map((squares) => new Set(squares)));
    expect(records.every(({ species, visit }) => lived[species]?.[visit.period]?.has(visit.square))).toBe(true);
  });

  it("is recorded twice as often where effort doubles", () => {
    const visits = inventTrial({ ...SMALL, scenario: "doubled" }).records.map(({ visit }) => visit.period);
    const recent = visits.filter((period) => period === 1).length / visits.length;
    // Two thirds of some 13,000 records; ten standard errors of a binomial share, for records of a visit come together.
    expect(recent).toBeGreaterThan(2 / 3 - 0.04);
    expect(recent).toBeLessThan(2 / 3 + 0.04);
  });
});

describe("counting alone", () => {
  it("calls few species where nothing changes, and most where effort doubles", async () => {
    // At most 5 %, and two standard errors of a share of 60.
    expect(of([await run("still")], "raw_counts").called).toBeLessThan(0.05 + 2 * 0.028);
    expect(of([await run("doubled")], "raw_counts").called).toBeGreaterThan(0.4);
  });

  it("sees less of a fall of 40 % than there was, where effort doubled", async () => {
    const fallen = of([await run("changing")], "raw_counts").by_change.find(({ change }) => change === -40);
    expect(fallen?.median_estimate).toBeGreaterThan(-40);
  });
});

describe("the table that atlases show", () => {
  const { made, rows } = JSON.parse(readFileSync(TABLE, "utf8")) as {
    made: { seeds: number[]; species: number; visits: number };
    rows: Performance[];
  };
  const told = (scenario: string) => rows.filter((row) => row.scenario === scenario);

  it("holds every scenario and method, over at least ten seeds", () => {
    expect(made.seeds.length).toBeGreaterThanOrEqual(10);
    const methods = told("still").map(({ method }) => method);
    expect(methods.slice(0, 2)).toEqual(["raw_counts", "squares_compared"]);
    for (const { id } of SCENARIOS) expect(told(id).map(({ method }) => method)).toEqual(methods);
    for (const row of rows) {
      expect(row.judged).toBeLessThanOrEqual(row.species);
      expect(row.by_change.reduce((sum, { judged }) => sum + judged, 0)).toBe(row.judged);
      expect(row.called_by_seed.reduce((sum, called) => sum + called, 0)).toBe(row.more + row.fewer);
    }
  });

  it("shows that counting alone fails as soon as effort changes", () => {
    for (const id of ["doubled", "moved", "shifted", "all_three"])
      expect(told(id).find(({ method }) => method === "raw_counts")?.called).toBeGreaterThan(0.1);
  });

  it("leaves a claim to those methods alone that call at most 5 % of unchanged species", () => {
    const kept = claimsOf(knownTruthFile().rows).filter(({ claim }) => claim === "kept");
    const unchanged = rows.filter(({ by_change }) => by_change.every(({ change }) => change === 0));
    for (const { method } of kept)
      for (const row of unchanged.filter((one) => one.method === method && one.called !== null))
        expect(row.called, `${method}, ${row.label}`).toBeLessThanOrEqual(0.05 + 2 * (row.called_error ?? 0));
  });

  it("is what the measures say now: where this fails, run npm run truth -- --write as it was run", async () => {
    const trial = { scenario: "all_three", seed: made.seeds[0] ?? 1, species: made.species, visits: made.visits };
    const again = summarise([await runTrial(trial, join(folder, "spill"))]);
    const now = Object.fromEntries(again.map(({ method, called_by_seed }) => [method, called_by_seed[0]]));
    expect(now).toEqual(Object.fromEntries(told("all_three").map((row) => [row.method, row.called_by_seed[0]])));
  });
});
