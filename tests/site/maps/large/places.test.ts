import { describe, expect, it } from "vitest";
import { transform } from "../../../../src/geodesy/transform.ts";
import { gridNamed } from "../../../../src/grids/index.ts";
import { buildAtlasMap } from "../../../../src/site/maps/atlas-map.ts";
import { placesOf } from "../../../../src/site/maps/large/places.ts";
import { britainAndIreland } from "../../../support/map-fixture.ts";

const { atlas, hectads } = britainAndIreland();
const grids = (["british", "irish", "channel-islands"] as const).map((id) => gridNamed(id));
const map = buildAtlasMap({ atlas, hectads, transform, grids });
const places = placesOf(map, atlas);

describe("places of the large map", () => {
  it("are the whole, then each territory in the atlas's order, a tall one in parts from the north", () => {
    expect(places.map(({ territory, part }) => [territory, part])).toEqual([
      ["all", ""],
      ["britain", "north"],
      ["britain", "middle"],
      ["britain", "south"],
      ["ireland", ""],
      ["channel-islands", ""],
    ]);
  });

  it("hold every square once besides the whole, each where its place is shown", () => {
    const parts = places.slice(1);
    const codes = parts.flatMap(({ hectads: own }) => own.map(({ square }) => square));
    expect(new Set(codes).size).toBe(codes.length);
    expect(codes.length).toBe(hectads.length);
    const north = parts[0]?.hectads.map(({ northing }) => northing) ?? [];
    const south = parts[2]?.hectads.map(({ northing }) => northing) ?? [];
    expect(Math.min(...north)).toBeGreaterThan(Math.max(...south));
  });

  it("show the Channel Islands in their inset", () => {
    const islands = places.at(-1)?.box;
    const inset = map.insets[0]?.box;
    expect(islands && inset && islands.left >= inset.left - 6 && islands.right <= inset.right + 6).toBe(true);
  });
});

it("shows one small territory as the whole alone", () => {
  const few = hectads.filter(({ territory }) => territory === "ireland").slice(0, 4);
  const small = buildAtlasMap({ atlas, hectads: few, transform, grids });
  expect(placesOf(small, atlas)).toHaveLength(1);
});
