/** Hidden records and the whole site: every page, table and tile, and the edition before. */
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import {
  codesFound,
  fingerprint,
  HIDDEN,
  type HiddenPlaces,
  LIST,
  TELLTALE,
  writeHiddenScheme,
} from "../support/hidden-species.ts";

const CLI = fileURLToPath(new URL("../../src/build/cli.ts", import.meta.url));

let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "atlaswright-hidden-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Builds in a process of its own, as schemes do. @returns the atlas's folder and the log */
function build(places: HiddenPlaces, list: string): { out: string; log: string } {
  writeHiddenScheme(join(folder, "scheme"), places, list);
  const { status, stderr } = spawnSync(process.execPath, [CLI, "build", "--content", "scheme", "--out", "out"], {
    cwd: folder,
    encoding: "utf8",
  });
  expect([status, status === 0 ? "" : stderr]).toEqual([0, ""]);
  return { out: join(folder, "out"), log: stderr };
}

describe("a site with hidden records", () => {
  it("tells nothing of their places, keeps nothing of an edition that did, and says why", async () => {
    const naked = build(HIDDEN, "");
    const told = await codesFound(naked.out, TELLTALE);
    for (const kind of [/\.html:/, /\.csv:/, /\.json:/, /\.parquet decoded:/])
      expect(told.some((one) => kind.test(one))).toBe(true);

    const { out, log } = build(HIDDEN, LIST.replace("2030-01-01", "2020-01-01"));
    expect(await codesFound(out, TELLTALE)).toEqual([]);
    expect(readdirSync(join(out, "data")).sort()).toEqual(["2021.1", "latest"]);
    expect(log).toContain("sensitive.csv row 2: secret was to be looked at again by 2020-01-01");

    const page = (path: string) => readFileSync(join(out, path, "index.html"), "utf8").replaceAll("\u00a0", " ");
    expect(page("species/exemplum-secretum")).toMatch(/Shown at 10 km\.<\/b> It is dug out\./);
    expect(page("species/exemplum-commune-secretum")).toMatch(/Records of Exemplum secretum are shown at 10 km\./);
    expect(page("species/exemplum-profundum")).toMatch(/Its places are withheld/);
    expect(page("species/exemplum-profundum")).not.toContain('<figure class="map-figure"');
    expect(page("methods")).toMatch(/<b>Exemplum nidificans<\/b> \(nest\): shown at 10 km\. Its nests are robbed\./);
    expect(existsSync(join(out, "map/taxa/exemplum-profundum.json"))).toBe(false);
    const places = JSON.parse(readFileSync(join(out, "identify/places/index.json"), "utf8")) as { untold: string[] };
    expect(places.untold).toEqual(["exemplum-profundum"]);
    expect(readdirSync(join(out, "identify/places"))).not.toContain("british-4-1.json");
    expect(readFileSync(join(out, "data/latest/README.txt"), "utf8")).toContain("Exemplum profundum: place withheld.");

    const first = fingerprint(out);
    const moved = build(
      { secret: ["SK1626", "SK1040", "SK1949"], deep: "O1534", fine: "SK1121", nest: "SK1828" },
      LIST.replace("2030-01-01", "2020-01-01"),
    );
    expect(fingerprint(moved.out)).toEqual(first);
  }, 240_000);
});
