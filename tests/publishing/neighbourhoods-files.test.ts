import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { NeighbourhoodBlock, NeighbourhoodIndex } from "../../src/publishing/contracts.ts";
import { blockOf } from "../../src/publishing/neighbourhoods-files.ts";
import { aroundSquare } from "../../src/site/components/narrow/around-square.ts";
import { HIDDEN, LIST, writeHiddenScheme } from "../support/hidden-species.ts";
import { runScheme } from "../support/run-scheme.ts";

const folder = mkdtempSync(join(tmpdir(), "neighbourhoods-"));
let places: string;
beforeAll(async () => {
  writeHiddenScheme(join(folder, "scheme"), HIDDEN, LIST);
  places = join((await runScheme(join(folder, "scheme"), folder)).published, "identify/places");
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const read = <T>(name: string, contract: { parse: (value: unknown) => T }): T =>
  contract.parse(JSON.parse(readFileSync(join(places, `${name}.json`), "utf8")));

describe("neighbourhoods for the browser", () => {
  it("stand in the block of 100 km that holds the square's corner", () => {
    expect([blockOf("british", 42, 57), blockOf("laea", 398, 302), blockOf("irish", 0, 9)]).toEqual([
      "british-4-5",
      "laea-39-30",
      "irish-0-0",
    ]);
  });

  it("list every square once, with the taxa recorded around", () => {
    const index = read("index", NeighbourhoodIndex);
    const squares = index.blocks.flatMap((name) => read(name, NeighbourhoodBlock).squares.map(([code]) => code));
    expect(new Set(squares).size).toBe(squares.length);
    expect(index.squares.join(" ").split(" ")).toEqual(squares);
    // SK12 lies at easting 410000, northing 320000 (SK is the 100 km square 4, 3).
    const block = read("british-4-3", NeighbourhoodBlock);
    const [, east, north] = block.squares.find(([code]) => code === "SK12") ?? [];
    expect([east, north]).toEqual([41, 32]);
    const around = aroundSquare(index, block, "SK12");
    expect(around?.nearby.get("exemplum-commune")).toMatchObject({ lastYear: 2018, nearestKm: 0 });
    expect(around?.frequencies.here?.shares.get("exemplum-commune")).toBeGreaterThan(0);
  });

  it("tell of a taxon shown at 10 km what its square tells, and of a withheld one no place at all", () => {
    const index = read("index", NeighbourhoodIndex);
    expect(index.untold).toEqual(["exemplum-profundum"]);
    const all = index.blocks.map((name) => aroundSquare(index, read(name, NeighbourhoodBlock), "SK12"));
    const around = all.find((one) => one !== undefined);
    expect(around?.nearby.has("exemplum-profundum")).toBe(false);
    expect(around?.nearby.get("exemplum-secretum")).toMatchObject({ here: 1 });
    expect(around?.frequencies.here?.shares.has("exemplum-profundum")).toBe(false);
  });
});
