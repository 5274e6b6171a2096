import { mkdtempSync, realpathSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { type KnownErrors, knownErrors } from "../../scripts/known-errors/known-errors.ts";
import { reviewDemonstration } from "../../scripts/known-errors/review-demonstration.ts";
import type { Database } from "../../src/engine/database.ts";

/**
 * What the checks have reached on the demonstration of seed 1: errors that leave a trace (scripts/known-errors/traces.sql)
 * and how many of them are found. A change may find more; it may not find fewer.
 */
const REACHED: Readonly<Record<string, [traceable: number, caught: number]>> = {
  "30-february": [60, 60],
  "day-and-month-swapped": [67, 67],
  "default-date": [114, 114],
  "emoji-in-remarks": [0, 0],
  "formula-in-remarks": [0, 0],
  "future-year": [59, 59],
  "hectad-as-point": [12, 12],
  "html-in-remarks": [0, 0],
  "impossible-caste": [53, 53],
  "longitude-sign-lost": [21, 21],
  "look-alike": [61, 52],
  "misspelt-name": [143, 143],
  "other-coordinate-system": [8, 8],
  "ragged-row": [62, 62],
  "reference-of-other-grid": [45, 45],
  "swapped-coordinates": [13, 13],
  "transposed-digits": [89, 87],
  "wrong-100-km-letters": [62, 62],
  "wrong-area": [21, 21],
  "zero-uncertainty": [9, 9],
};
/** The aims: 95 in a hundred of the errors that leave a trace, and at most 2 in a hundred sound records asked about. */
const FOUND_AT_LEAST = 0.95;
const ASKED_AT_MOST = 0.02;
/** Sound records asked about or held, by any check; a change may ask about fewer, and more only where it finds more. */
const ASKED_SO_FAR = 1_122;

const folder = realpathSync(mkdtempSync(join(tmpdir(), "known-errors-")));
let database: Database | undefined;
let found: KnownErrors;
beforeAll(async () => {
  const reviewed = await reviewDemonstration(folder);
  database = reviewed.database;
  found = await knownErrors(database, reviewed.scheme);
}, 300_000);
afterAll(() => {
  database?.close();
  rmSync(folder, { recursive: true, force: true });
});

it("knows the trace of every kind of error, from the truth alone", () => {
  expect(Object.fromEntries(found.table.map(({ kind, detectable }) => [kind, detectable]))).toEqual(
    Object.fromEntries(Object.entries(REACHED).map(([kind, [traceable]]) => [kind, traceable])),
  );
});

it("finds no fewer errors of any kind than before", () => {
  const fewer = found.table.filter(({ kind, caught }) => caught < (REACHED[kind]?.[1] ?? 0));
  expect(fewer).toEqual([]);
});

it("finds nearly all errors that leave a trace and asks about few sound records", () => {
  const sum = (of: "detectable" | "caught") => found.table.reduce((total, row) => total + row[of], 0);
  expect(sum("caught") / sum("detectable")).toBeGreaterThanOrEqual(FOUND_AT_LEAST);
  const asked = found.sound.find(({ check_name }) => check_name === "any check")?.records ?? 0;
  expect(asked / found.soundRecords).toBeLessThanOrEqual(ASKED_AT_MOST);
  expect(asked).toBeLessThanOrEqual(ASKED_SO_FAR);
});
