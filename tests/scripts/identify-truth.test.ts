import { mkdtempSync, realpathSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { publishDemonstration } from "../../scripts/identify-truth/publish-demonstration.ts";
import { type Summary, summarise } from "../../scripts/identify-truth/summary.ts";
import { readTables } from "../../scripts/identify-truth/tables.ts";
import { CONDITIONS, runTrials, type Trial } from "../../scripts/identify-truth/trials.ts";
import { identifyTruthFile } from "../../src/publishing/identify-truth-file.ts";

/** A demonstration of another seed, a fifteenth of the size: its tables know less of each place. */
const SMALL = { seed: 3, records: 8000 } as const;
const SIGHTINGS = 250;

const folder = realpathSync(mkdtempSync(join(tmpdir(), "identify-truth-")));
let trials: Trial[];
let summary: Summary;
beforeAll(async () => {
  trials = runTrials(readTables(await publishDemonstration(folder, SMALL)), { seed: SMALL.seed, count: SIGHTINGS });
  summary = summarise(trials);
}, 300_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const told = (characters: number, known: boolean) => {
  const row = summary.rows.find((one) => one.characters === characters && one.place === known && one.date === known);
  if (row === undefined) throw new Error(`no trials with ${characters} characters`);
  return row;
};

describe("the helper on invented sightings", () => {
  it("is not over-confident: of what it gives at least 9 in 10, at least 85 % are right", () => {
    const sure = trials.filter(({ chance }) => chance >= 0.9);
    expect(sure.length).toBeGreaterThan(100);
    expect(sure.filter(({ rank }) => rank === 1).length / sure.length).toBeGreaterThanOrEqual(0.85);
    for (const { sightings, said, right } of summary.tenths.filter((tenth) => tenth.sightings >= 100))
      expect([sightings, right]).toEqual([sightings, expect.toSatisfy((share: number) => share >= said - 0.1)]);
  });

  it("seldom puts a wrong taxon first with confidence", () => {
    for (const row of summary.rows) {
      expect(row.wrong_at_nine).toBeLessThanOrEqual(0.02);
      expect(row.wrong_at_seven).toBeLessThanOrEqual(0.08);
    }
  });

  it("does better the more it is told, and most often has the truth among the first three", () => {
    expect(told(2, true).first).toBeGreaterThan(told(0, true).first + 0.2);
    expect(told(4, true).first).toBeGreaterThan(told(2, true).first);
    expect(told(4, true).first_or_group).toBeGreaterThanOrEqual(0.7);
    expect(told(4, true).first_three).toBeGreaterThanOrEqual(0.88);
  });

  it("gives every true taxon a place in its list", () => {
    expect(trials.length).toBe(SIGHTINGS * CONDITIONS.length);
    expect(trials.every(({ rank }) => rank > 0)).toBe(true);
  });

  it("is the same for the same seed", () => {
    const again = runTrials(readTables(join(folder, "published")), { seed: SMALL.seed, count: 20 });
    expect(again).toEqual(trials.slice(0, again.length));
  });
});

describe("the figures every atlas shows", () => {
  it("are of a whole trial, and keep the same bounds", () => {
    const { made, rows, tenths } = identifyTruthFile();
    expect(made).toEqual({ seed: 1, sightings: 2000, records: 120_000 });
    expect(rows.length).toBe(CONDITIONS.length);
    expect(tenths.at(-1)?.right).toBeGreaterThanOrEqual(0.85);
  });
});
