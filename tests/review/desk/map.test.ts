import { describe, expect, it } from "vitest";
import { aroundOf } from "../../../src/review/desk/around.ts";
import { mapsOf } from "../../../src/review/desk/map.ts";
import { recordOf } from "../../../src/review/desk/record.ts";
import { seasonOf } from "../../../src/review/desk/season.ts";
import { openTestDesk } from "../../build/desk/desk-scheme.ts";
import { makeTemporaryFolder } from "../../support/temporary-folder.ts";

/** Rows of the template's records are its records' numbers: the header is row 1. */
const FIRST = 2;
const UNKNOWN_NAME = 12;

describe("the map of a record", () => {
  it("stands upright on its own grid, in kilometres, with the nearest square measured by hand", async () => {
    const { desk } = await openTestDesk(makeTemporaryFolder());
    const map = await mapsOf(desk).map(FIRST);
    // SK123456 is the square of 100 m whose middle is 412,350 E 345,650 N; SK14 has its middle at 415,000 E 345,000 N.
    expect(map?.middle?.map((value) => value.toFixed(2))).toEqual(["412.35", "-345.65"]);
    expect(map?.nearest?.square).toBe("SK14");
    expect(map?.nearest?.km).toBeCloseTo(Math.hypot(2.65, 0.65), 2);
    expect(map?.view.map(Math.round)).toEqual([322, -436, 180, 180]);
    expect(map?.here).toBe("M412.3 -345.6L412.3 -345.7L412.4 -345.7L412.4 -345.6Z");
    // The taxon was recorded in SK14 and SK24 in both periods: each a square less a sixteenth at every side.
    expect(map?.both).toBe(
      "M410.6 -340.6L410.6 -349.4L419.4 -349.4L419.4 -340.6ZM420.6 -340.6L420.6 -349.4L429.4 -349.4L429.4 -340.6Z",
    );
    expect([map?.earlier, map?.recent, map?.squares]).toEqual(["", "", 2]);
  });

  it("shows a record whose name was not read without squares, and none for a record that is not there", async () => {
    const { desk } = await openTestDesk(makeTemporaryFolder());
    const map = await mapsOf(desk).map(UNKNOWN_NAME);
    expect([map?.squares, map?.nearest]).toEqual([0, null]);
    expect(map?.visited).toContain("M410.0 -340.0L410.0 -350.0L420.0 -350.0L420.0 -340.0Z");
    expect(await mapsOf(desk).map(99_999)).toBeNull();
  });
});

describe("a record", () => {
  it("tells its cells as they stand, its questions, what settles it, its season and its neighbours", async () => {
    const { desk } = await openTestDesk(makeTemporaryFolder());
    const asked = await recordOf(desk, UNKNOWN_NAME);
    expect(asked?.questions.map(({ check, severity }) => [check, severity])).toContainEqual(["name_unknown", "ask"]);
    expect(asked?.settling).toBeNull();
    const known = await recordOf(desk, FIRST);
    expect(known?.days).toEqual(["2003-05-14", "2003-05-14"]);
    // 14 May is in the second third of the fifth month.
    expect(known?.thirds).toEqual([13, 13]);
    expect(known?.cells.slice(0, 3)).toEqual([
      ["occurrenceID", "invented-1"],
      ["scientificName", "Exemplum primum"],
      ["eventDate", "2003-05-14"],
    ]);
    expect(known?.settling?.rows.map(({ part, cells }) => [part, ...cells.map((cell) => cell?.state)])).toEqual([
      ["size", "4–6 mm", "4–6 mm"],
      ["wing-case", "four spots", "two spots"],
    ]);
    // Adults of the first species: 2003-05-14, 2014-05-20 and 2018-06-11; 2009-07 is in no third.
    const season = await seasonOf(desk, "invented-primum");
    const adults = season.castes.find(({ id }) => id === "adult");
    expect(adults?.thirds.flatMap((count, third) => (count > 0 ? [[third, count]] : []))).toEqual([
      [13, 2],
      [16, 1],
    ]);
    const around = await aroundOf(desk, FIRST);
    expect(around.neighbours.map(({ record }) => record)).toEqual([2, 3, 4, 5]);
    expect(around.visit.map(({ key }) => key)).toEqual(["example:invented-2"]);
    expect(around.alike).toEqual([]);
  });
});
