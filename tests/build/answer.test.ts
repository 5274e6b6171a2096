import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, it } from "vitest";
import { type Answer, answerInWords } from "../../src/build/answer.ts";

let answer: Answer;

beforeAll(() => {
  const worked = fileURLToPath(new URL("../golden/two-grids/expected/answer.json", import.meta.url));
  answer = JSON.parse(readFileSync(worked, "utf8")) as Answer;
});

/** Every key of an object, of the objects in it, and of those in its lists. */
function keysOf(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(keysOf);
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [key, ...keysOf(inner)]);
}

describe("the answer", () => {
  it("has no key that its docstring does not explain", () => {
    const source = readFileSync(join(import.meta.dirname, "../../src/build/answer.ts"), "utf8");
    const explained = new Set(
      [...source.slice(0, source.indexOf("export interface")).matchAll(/`([a-z_]+)`/g)].map(([, key]) => key),
    );
    expect(keysOf({ ...answer, out: "", findings_file: "" }).filter((key) => !explained.has(key))).toEqual([]);
  });

  it("accounts for every record", () => {
    const { read, used, held, not_used } = answer.records;
    expect(used + held + not_used).toBe(read);
    expect(answer.accounting.reduce((sum, { records }) => sum + records, 0)).toBe(read);
  });

  // By hand, from the records as tests/golden/two-grids/README.md lays them out.
  it.each([
    [10_000, "all", "1990–2005", 3, 7],
    [10_000, "all", "2006–2020", 5, 13],
    [10_000, "all", "outside", 1, 2],
    [10_000, "all", "ever", 5, 22],
    [10_000, "ireland", "ever", 1, 6],
    [2_000, "all", "1990–2005", 2, 6],
    [2_000, "all", "2006–2020", 6, 12],
    [2_000, "britain", "ever", 5, 14],
  ])(
    "counts squares of %i m in %s, %s: %i with a record, %i visits",
    (resolution_m, territory, period, squares, visits) => {
      expect(answer.squares).toContainEqual({ resolution_m, territory, period, squares, visits });
    },
  );
});

describe("answerInWords", () => {
  it("says what became of the records, the squares of all territories, and the findings", () => {
    const words = answerInWords(answer);
    expect(words).toContain("Two Grids, edition 2021.1");
    expect(words).toContain("40 records read = 29 used + 1 held + 10 not used");
    expect(words).toMatch(/ {11}5 {2}of 10 km, ever \(22 visits\)/);
    expect(words).not.toContain("outside (");
    expect(words.match(/^ +\d+ {2}(used|held|not used): /gm)?.length).toBe(13);
    expect(words.indexOf("used: as published")).toBeLessThan(words.indexOf("held: "));
    expect(words.indexOf("held: ")).toBeLessThan(words.indexOf("not used: "));
  });

  it("says what to set where a setting is missing", () => {
    const findings = [{ check: "datum_not_stated", severity: "ask" as const, title: "no datum is stated", records: 9 }];
    expect(answerInWords({ ...answer, findings })).toMatch(/no datum is stated: set datum for the source, .*EPSG:4326/);
  });
});
