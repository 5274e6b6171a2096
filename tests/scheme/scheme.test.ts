import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { placingTerritories } from "../../src/records/record-stage.ts";
import { readScheme } from "../../src/scheme/scheme.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";
import { mistakeOf } from "./mistakes.ts";

const ATLAS = `title: Small
edition: { id: "1", date: 2025-03-01 }
periods: [{ id: ever, from: null, to: 2024 }]
territories: [{ id: britain, name: Britain, grid: british }]
castes:
  - { id: worker, label: Worker, words: [worker] }
first_seen: [{ id: red, title: Red tail, look_at: The tail }]
sources: [{ id: walks, files: records/walks.csv }]
`;
const CHECKLIST =
  "taxonID,scientificName,vernacularNames,castes,within,firstSeen\na,Bombus alpha,en:Red bee | en:Scarlet bee,worker,,red\nb,Bombus beta,,,,\n";

/** A scheme's folder with some files changed, added, or with null left out. */
function folderWith(changed: Readonly<Record<string, string | Uint8Array | null>> = {}): string {
  const folder = makeTemporaryFolder();
  for (const [file, content] of Object.entries({ "atlas.yaml": ATLAS, "checklist.csv": CHECKLIST, ...changed })) {
    if (content === null) continue;
    mkdirSync(join(folder, file, ".."), { recursive: true });
    writeFileSync(join(folder, file), content);
  }
  return folder;
}

/** The message of a scheme, with the name of its folder as FOLDER. */
function messageOf(changed: Parameters<typeof folderWith>[0]): string {
  const folder = folderWith(changed);
  return mistakeOf(() => readScheme(folder)).replaceAll(folder, "FOLDER");
}

describe("a scheme", () => {
  it("is a folder with settings and a checklist", () => {
    const scheme = readScheme(folderWith());
    expect(scheme.taxa).toHaveLength(2);
    expect(scheme.characters).toEqual([]);
    expect(scheme.landSquares).toBeNull();
    expect(scheme.territories).toMatchObject([{ id: "britain", polygon: { type: "Polygon" } }]);
  });

  // The national grids' own places: latitude and longitude of the towns from the geodesy reference points.
  it.each([
    ["british", -0.0015, 51.4778, true],
    ["british", -6.26031, 53.349805, false],
    ["irish", -6.26031, 53.349805, true],
    ["irish", -5.93005, 54.59649, true],
    ["british", -4.4809, 54.1523, true],
    ["channel-islands", -2.106568, 49.186823, true],
  ])("without polygons uses the %s grid where it is used: %f %f %s", (grid, longitude, latitude, inside) => {
    const folder = folderWith({ "atlas.yaml": ATLAS.replace("grid: british", `grid: ${grid}`) });
    const [territory] = placingTerritories(readScheme(folder));
    expect(territory?.holds(longitude, latitude)).toBe(inside);
  });

  it("needs polygons where two territories share a grid, or one is on a continental grid", () => {
    const two = (grid: string) =>
      ATLAS.replace(
        /territories:.*\n/,
        `territories: [{ id: a, name: A, grid: british }, { id: b, name: B, grid: ${grid} }]\n`,
      );
    expect(readScheme(folderWith({ "atlas.yaml": two("irish") })).territories).toHaveLength(2);
    expect(messageOf({ "atlas.yaml": two("british") })).toMatch(
      /territory_polygons is missing, and a and b use the same grid/,
    );
    expect(messageOf({ "atlas.yaml": two("laea") })).toMatch(/the laea grid of b is used in many countries/);
  });

  it("finds a taxon by each of its names in one language", () => {
    const { checklist } = readScheme(folderWith());
    expect(checklist.match("Red bee")).toMatchObject({ taxonId: "a" });
    expect(checklist.match("scarlet bee")).toMatchObject({ taxonId: "a" });
  });

  it.each<[string, Parameters<typeof folderWith>[0], string]>([
    [
      "no settings",
      { "atlas.yaml": null },
      "atlas.yaml is not in FOLDER; name the scheme's folder with --content, or make one with atlaswright new FOLDER",
    ],
    [
      "no checklist",
      { "checklist.csv": null },
      "atlas.yaml: checklist.csv is not in FOLDER; add it, or correct its name in atlas.yaml",
    ],
    [
      "a checklist in another encoding",
      { "checklist.csv": Buffer.from("taxonID,scientificName\na,B\u00e9\n", "latin1") },
      "checklist.csv:2:1: the file is not UTF-8; save it again as UTF-8",
    ],
    [
      "a caste of no vocabulary",
      { "checklist.csv": CHECKLIST.replace(",worker,", ",drone,") },
      "checklist.csv: row 2, field castes: “drone” is no caste of atlas.yaml; write one of worker",
    ],
    [
      "a group of no setting",
      { "checklist.csv": CHECKLIST.replace(",red", ",blue") },
      "checklist.csv: row 2, field firstSeen: “blue” is no first_seen group of atlas.yaml; write one of red",
    ],
    [
      "characters of an unknown taxon",
      { "characters.csv": "taxonID,part,state,reliability\nz,tail,red,settles\n" },
      "characters.csv: row 2, field taxonID: taxonID “z” is not in checklist.csv; correct it, or add the taxon to the checklist",
    ],
    [
      "characters of an unknown caste",
      { "characters.csv": "taxonID,castes,part,state,reliability\na,worker | drone,tail,red,settles\n" },
      "characters.csv: row 2, field castes: “drone” is no caste of atlas.yaml; write one of worker",
    ],
    [
      "an account of an unknown taxon",
      { "species/z.md": "---\ntaxonID: z\n---\n" },
      "species/z.md: taxonID “z” is not in checklist.csv; correct it, or add the taxon to the checklist",
    ],
    [
      "two accounts of one taxon",
      { "species/a.md": "---\ntaxonID: a\n---\n", "species/b.md": "---\ntaxonID: a\n---\n" },
      "species/b.md: a has an account in species/a.md already; join the two",
    ],
    [
      "a page whose name is no address",
      { "pages/About us.md": "---\ntitle: x\n---\n" },
      "pages/About us.md: “About us.md” cannot be part of an address; use lower-case letters, figures and -",
    ],
    [
      "a name of two taxa",
      { "checklist.csv": CHECKLIST.replace("Bombus beta", "Bombus alpha") },
      "checklist.csv: row 3: the checklist does not agree with itself: ",
    ],
    [
      "a base map that is not there",
      { "atlas.yaml": `${ATLAS}basemap: { land: land.geojson, credit: none }\n` },
      "atlas.yaml:9:18: basemap.land names land.geojson, which is not in FOLDER; add it, or correct its name",
    ],
    [
      "land squares that are not there",
      { "atlas.yaml": `${ATLAS}land_squares: land.csv\n` },
      "atlas.yaml: land.csv is not in FOLDER; add it, or correct its name in atlas.yaml",
    ],
    [
      "polygons that are none",
      { "atlas.yaml": `${ATLAS}territory_polygons: t.geojson\n`, "t.geojson": "{}" },
      "t.geojson: the file is not GeoJSON with polygons that have a property territory; see the contract of territory_polygons",
    ],
  ])("with %s says so", (_, changed, message) => {
    expect(messageOf(changed).slice(0, message.length)).toBe(message);
  });

  it("holds its files itself: a link that leads out of the folder is refused, one inside is not", () => {
    const outside = join(makeTemporaryFolder(), "checklist.csv");
    writeFileSync(outside, CHECKLIST);
    const folder = folderWith({ "checklist.csv": null });
    symlinkSync(outside, join(folder, "checklist.csv"));
    expect(mistakeOf(() => readScheme(folder)).replaceAll(folder, "FOLDER")).toBe(
      "atlas.yaml: checklist.csv leads out of FOLDER; copy the file into the scheme's folder",
    );
    const inside = folderWith({ "checklist.csv": null, "lists/names.csv": CHECKLIST });
    symlinkSync(join(inside, "lists/names.csv"), join(inside, "checklist.csv"));
    expect(readScheme(inside).taxa).toHaveLength(2);
  });
});
