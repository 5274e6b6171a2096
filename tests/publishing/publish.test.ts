import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { AtlasFile, SquareFile, SquaresFile, TaxonFile } from "../../src/publishing/contracts.ts";
import { runScheme } from "../support/run-scheme.ts";

// Every number below was worked out by hand from the records, as tests/golden/two-grids/README.md lays them out.
const TWO_GRIDS = fileURLToPath(new URL("../golden/two-grids/input/", import.meta.url));

let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "atlaswright-publish-"));
  await runScheme(TWO_GRIDS, folder);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function read<T>(path: string): T {
  return JSON.parse(readFileSync(join(folder, "published", path), "utf8")) as T;
}

const taxon = (slug: string) => read<TaxonFile>(`taxa/exemplum-${slug}.json`);
const square = (slug: string) => read<SquareFile>(`squares/${slug}.json`);

describe("the published folder", () => {
  it("has a file for every taxon and every hectad", () => {
    const names = (part: string) => readdirSync(join(folder, "published", part)).sort();
    expect(names("taxa")).toEqual(
      ["album-nigrum", "album", "nigrum", "rubrum", "viride"].map((name) => `exemplum-${name}.json`).sort(),
    );
    expect(names("squares")).toEqual(["na10.json", "no42.json", "o13.json", "sk12.json", "tq37.json"]);
    expect(read<SquaresFile>("squares.json").squares.map((one) => one.square)).toEqual([
      "NA10",
      "NO42",
      "O13",
      "SK12",
      "TQ37",
    ]);
  });

  it("counts the whole atlas", () => {
    expect(read<AtlasFile>("atlas.json").totals).toEqual({
      records_read: 40,
      records_used: 29,
      hectads: 5,
      tetrads: 6,
      visits: 24,
      first_year: 1985,
      last_year: 2021,
    });
  });
});

describe("a taxon's file", () => {
  it("has its squares with state, coverage, records and visits by period", () => {
    expect(taxon("viride").squares["10000"]).toEqual([
      {
        square: "NO42",
        state: "retained",
        covered: [false, false],
        records: [1, 1],
        visits: [1, 1],
        first_year: 2001,
        last_year: 2015,
      },
      {
        square: "O13",
        state: "gained",
        covered: [true, true],
        records: [0, 1],
        visits: [0, 1],
        first_year: 2017,
        last_year: 2017,
      },
      {
        square: "SK12",
        state: "retained",
        covered: [true, true],
        records: [1, 2],
        visits: [0, 2],
        first_year: 1985,
        last_year: 2019,
      },
    ]);
    expect(taxon("viride").squares["2000"].find((one) => one.square === "SK12A")).toEqual({
      square: "SK12A",
      state: "recorded",
      covered: [true, true],
      records: [0, 0],
      visits: [0, 0],
      first_year: 1985,
      last_year: 2006,
    });
  });

  it("lists squares without it that are not covered in one or both periods", () => {
    expect(taxon("album").uncovered).toEqual({ neither: ["NO42", "TQ37"], later_only: [], earlier_only: [] });
    expect(taxon("viride").uncovered).toEqual({ neither: ["TQ37"], later_only: ["NA10"], earlier_only: [] });
  });

  it("says why records are on no square", () => {
    expect(taxon("album").not_on_map).toEqual([
      { resolution_m: 2_000, reason: "named a square of 100 km", records: 1 },
      { resolution_m: 10_000, reason: "named a square of 100 km", records: 1 },
    ]);
    const reasons = new Map(taxon("rubrum").not_on_map.map(({ resolution_m, records }) => [resolution_m, records]));
    expect([...reasons]).toEqual([
      [2_000, 1],
      [10_000, 1],
    ]);
  });

  it("counts castes in thirds of the month, and those that cannot be placed beside", () => {
    const rows = taxon("nigrum").season_by_caste.map(({ caste, total, left_out, records }) => [
      caste,
      total,
      left_out,
      records.indexOf(1),
    ]);
    // 21 August is the third of the month 7 × 3 + 2 = 23, 7 July is 18.
    expect(rows).toEqual([
      ["queen", 1, 0, 23],
      ["worker", 1, 0, 23],
      ["not_stated", 1, 0, 18],
    ]);
    expect(taxon("album-nigrum").season_by_caste.find(({ caste }) => caste === "not_stated")).toMatchObject({
      total: 4,
      left_out: 1,
    });
  });

  it("changes by territory and in all", () => {
    const rows = taxon("album")
      .change.filter(({ resolution_m }) => resolution_m === 10_000)
      .map(({ territory, retained, gained, lost, not_comparable_since }) => [
        territory,
        retained,
        gained,
        lost,
        not_comparable_since,
      ]);
    expect(rows).toEqual([
      ["all", 0, 0, 2, 1],
      ["britain", 0, 0, 1, 1],
      ["ireland", 0, 0, 1, 0],
    ]);
  });
});

describe("a square's file", () => {
  it("counts the fewest taxa that explain the names, by period and in all", () => {
    expect(square("sk12")).toMatchObject({
      territory: "britain",
      records: 14,
      visits: [3, 5],
      taxa: [3, 3],
      taxa_all: 4,
    });
    expect(square("o13")).toMatchObject({
      territory: "ireland",
      records: 6,
      visits: [3, 3],
      taxa: [2, 2],
      taxa_all: 3,
    });
  });

  it("lists its tetrads and its names as they were recorded", () => {
    expect(square("sk12").tetrads).toEqual([
      { square: "SK12A", letter: "A", visits: 8, taxa: 4, records: 9 },
      { square: "SK12Z", letter: "Z", visits: 1, taxa: 2, records: 2 },
    ]);
    expect(square("sk12").taxa_list.map(({ slug, state, records }) => [slug, state, records])).toEqual([
      ["exemplum-rubrum", "retained", 5],
      ["exemplum-viride", "retained", 5],
      ["exemplum-nigrum", "gained", 2],
      ["exemplum-album", "lost", 1],
      ["exemplum-album-nigrum", "retained", 1],
    ]);
  });
});
