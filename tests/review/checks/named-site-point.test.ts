import { describe, expect, it } from "vitest";
import type { SiteRow } from "../../../src/scheme/sites-file.ts";
import { useDatabase } from "../../records/reading.ts";
import { asked, LIST_HEADER, listed } from "../asking.ts";
import { review } from "../reviewing.ts";

const database = useDatabase();
const settings = { more: { checks: { site_points: { records: 6, days: 3, recorders: 3 } } } };
const records = (place: string, people = 3) =>
  Array.from({ length: 6 }, (_, index) =>
    listed({ id: `a${index}`, place, day: `2011-07-1${index % 3}`, recorder: `R${index % people}` }),
  );
const site = (given: Partial<SiteRow>): SiteRow => ({
  name: "",
  gridReference: "",
  decimalLatitude: "",
  decimalLongitude: "",
  uncertainty_m: 1_500,
  note: "",
  row: 2,
  ...given,
});

it("asks once about a fine point that several people gave on several days", async () => {
  expect(await asked(database(), records("SP500061"), ["named_site_point"], settings)).toEqual(["2: named_site_point"]);
});

it("says nothing of a 1 km square, of one person's spot, and of a site that sites.csv knows", async () => {
  expect(await asked(database(), records("SP5006"), ["named_site_point"], settings)).toEqual([]);
  expect(await asked(database(), records("SP500061", 1), ["named_site_point"], settings)).toEqual([]);
  const sites = [site({ gridReference: "SP500061" })];
  expect(await asked(database(), records("SP500061"), ["named_site_point"], { ...settings, sites })).toEqual([]);
});

describe("a site of sites.csv", () => {
  async function tetrads(rows: readonly string[], sites: SiteRow[]) {
    const read = await review(database(), { walks: [LIST_HEADER, ...rows].join("\n") }, { sites });
    return read.records.map(({ hectad, tetrad }) => [hectad, tetrad]);
  }
  // SP500061 is E 450,000–450,100 N 206,100–206,200, on the western line of SP50 and in its tetrad D: a circle of 1.5 km
  // around its middle lies to a half in SP40. SP545055, E 454,550 N 205,550, is in tetrad M and 4.5 km from any line of SP50.
  it("makes its records as uncertain as itself, by point and by locality", async () => {
    expect(await tetrads([listed({ id: "a", place: "SP500061" })], [])).toEqual([["SP50", "SP50D"]]);
    expect(await tetrads([listed({ id: "a", place: "SP500061" })], [site({ gridReference: "SP 500 061" })])).toEqual([
      [null, null],
    ]);
    const named = listed({ id: "a", place: "SP545055", locality: " LONG mead" });
    expect(await tetrads([named], [site({ name: "Long Mead" })])).toEqual([["SP50", null]]);
    expect(await tetrads([named], [site({ name: "Short Mead" })])).toEqual([["SP50", "SP50M"]]);
  });

  it("never makes a place finer", async () => {
    expect(
      await tetrads(
        [listed({ id: "a", place: "SP50", locality: "Long Mead" })],
        [site({ name: "Long Mead", uncertainty_m: 50 })],
      ),
    ).toEqual([["SP50", null]]);
  });
});
