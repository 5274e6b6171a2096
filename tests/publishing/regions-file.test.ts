/** Regions as published, and what a stranger could learn of hidden records from the regions they state. */
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { RegionFile, RegionsFile } from "../../src/publishing/contracts.ts";
import { regionsById } from "../../src/publishing/regions-file.ts";
import { fingerprint, HIDDEN, type HiddenPlaces, LIST, writeHiddenScheme } from "../support/hidden-species.ts";
import { runScheme } from "../support/run-scheme.ts";

let folder: string;
let runs = 0;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "atlaswright-regions-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** West and east of 1.82° west, a line that goes through the hectad SK12 where hidden records are. */
const box = (name: string, west: number, east: number) => ({
  type: "Feature",
  properties: { field: "county", name, territory: "britain" },
  geometry: {
    type: "Polygon",
    coordinates: [
      [
        [west, 50],
        [east, 50],
        [east, 56],
        [west, 56],
        [west, 50],
      ],
    ],
  },
});
const REGIONS = { type: "FeatureCollection", features: [box("West", -5, -1.82), box("East", -1.82, 1)] };

/** Publishes the scheme with hidden records, all of whose rows state a region. @param of its region by a row's id */
async function published(places: HiddenPlaces, of: (id: string) => string, list = LIST): Promise<string> {
  runs += 1;
  const own = join(folder, String(runs));
  writeHiddenScheme(join(own, "scheme"), places, list);
  writeFileSync(join(own, "scheme/regions.geojson"), JSON.stringify(REGIONS));
  const file = join(own, "scheme/records/walks.csv");
  const [header = "", ...rows] = readFileSync(file, "utf8").trim().split("\n");
  const told = rows.map((row) => `${row},${of(row.split(",")[0] ?? "")}`);
  writeFileSync(file, `${[`${header},county`, ...told].join("\n")}\n`);
  return (await runScheme(join(own, "scheme"), own)).published;
}
const isHidden = (id: string) => /^[sdn]\d$/.test(id);

describe("regions as published", () => {
  it("never use what a hidden record states: moved within what is shown, stating another region, no byte changes", async () => {
    const stating = (hidden: string) => (id: string) => (isHidden(id) ? hidden : "");
    const first = fingerprint(await published(HIDDEN, stating("West")));
    const moved: HiddenPlaces = { ...HIDDEN, secret: ["SK1828", "SK1444", "SK1444"] };
    expect(fingerprint(await published(moved, stating("East")))).toEqual(first);
    const naked = fingerprint(await published(HIDDEN, stating("West"), ""));
    expect(fingerprint(await published(HIDDEN, stating("East"), ""))).not.toEqual(naked);
  }, 60_000);

  it("list what was recorded, by region, with the boundary apart", async () => {
    const out = await published(HIDDEN, (id) => (id === "o9" ? "east" : ""));
    const list = RegionsFile.parse(JSON.parse(readFileSync(join(out, "regions.json"), "utf8")));
    const east = RegionFile.parse(JSON.parse(readFileSync(join(out, "regions/east.json"), "utf8")));
    expect(list.layers.map(({ field, regions }) => [field, regions.map(({ name }) => name)])).toEqual([
      ["county", ["West", "East"]],
    ]);
    // SK1828, records o5 and o6, lies east of 1.82° west; o9 is the whole hectad SK12, on the line, and states East.
    expect(east).toMatchObject({ name: "East", territory: "britain", records: 3, records_stated: 1, taxa: 1 });
    const common = east.taxa_list.find(({ slug }) => slug === "exemplum-commune");
    expect(common).toEqual({
      slug: "exemplum-commune",
      records: 2,
      hectads: 1,
      tetrads: 1,
      first_year: 2016,
      last_year: 2018,
    });
    // Of SK12 on the line: secret and the nest, shown at 10 km. In none: secret's SK14 is not; Ireland's two are.
    const total = list.layers[0]?.regions.reduce(
      (sum, { records }) => sum + records,
      list.layers[0].not_assigned.records,
    );
    expect(total).toBe(14);
    const csv = readFileSync(join(out, "data/2021.1/region_taxa.csv"), "utf8");
    expect(csv).toContain("county,east,common,2,1,1,2016,2018,true");
    expect(csv).toContain("county,not_assigned,deep,1,0,0,2015,2015,true");
  });

  it("are not there in a scheme without regions", async () => {
    writeHiddenScheme(join(folder, "none/scheme"), HIDDEN, LIST);
    const { published: out } = await runScheme(join(folder, "none/scheme"), join(folder, "none"));
    expect(
      ["regions.json", "regions", "data/2021.1/regions.csv"].filter((path) => existsSync(join(out, path))),
    ).toEqual([]);
  });
});

it("takes features of one id for one region, the first one's name", () => {
  const region = (id: string, code: string) => ({
    id,
    code,
    name: id,
    territory: "",
    field: "county" as const,
    polygon: { type: "Polygon" as const, coordinates: [] },
  });
  const known = regionsById([region("b", "1"), region("a", "2"), region("b", "3")]);
  expect([...known].map(([id, { code }]) => [id, code])).toEqual([
    ["b", "1"],
    ["a", "2"],
  ]);
});
