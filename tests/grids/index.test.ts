import { describe, expect, it } from "vitest";
import { readGridShift } from "../../src/geodesy/grid-shift.ts";
import type { GridId } from "../../src/grids/grid.ts";
import { GRID_IDS, gridNamed } from "../../src/grids/index.ts";
import { MADE_TABLES, makeNtv2 } from "../support/ntv2.ts";

describe("gridNamed", () => {
  it.each(GRID_IDS)("gives the %s grid under its own id", (id) => expect(gridNamed(id).id).toBe(id));

  it("knows five grids", () => expect(GRID_IDS).toEqual(["british", "irish", "channel-islands", "laea", "mgrs"]));

  it("hands on the datum of the Channel Islands", () => {
    expect(gridNamed("channel-islands", { channelIslandsDatum: "WGS84" }).project(-2.1, 49.2).crs).toBe("EPSG:32630");
    expect(gridNamed("channel-islands").project(-2.1, 49.2).crs).toBe("EPSG:23030");
  });

  it("hands on the grid-shift file to the British grid, both ways", () => {
    const shift = readGridShift(makeNtv2(MADE_TABLES), { name: "made.gsb", datum: "EPSG:4277", accuracy: 0.1 });
    const shifted = gridNamed("british", { britishGridShift: shift });
    const point = shifted.project(1.7, 52.6);
    expect(point).not.toEqual(gridNamed("british").project(1.7, 52.6));
    const [longitude, latitude] = shifted.unproject(point);
    expect(longitude).toBeCloseTo(1.7, 9);
    expect(latitude).toBeCloseTo(52.6, 9);
  });

  it.each(["french", "", "toString"])("refuses “%s”", (id) => {
    expect(() => gridNamed(id as GridId)).toThrow(
      `unknown grid “${id}”; use one of british, irish, channel-islands, laea, mgrs`,
    );
  });
});

describe("examples", () => {
  it("gridNamed", () => expect(gridNamed("irish").name).toBe("Irish Grid"));
});
