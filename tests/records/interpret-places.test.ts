import { describe, expect, it } from "vitest";
import { gridNamed } from "../../src/grids/index.ts";
import { interpret } from "./interpreting.ts";
import { useDatabase } from "./reading.ts";

const database = useDatabase();
const british = gridNamed("british");

/** A file of points given in metres of the British grid and written in degrees. */
function points(metres: readonly (readonly [number, number])[], decimals = 6): string {
  const rows = metres.map(([easting, northing]) => {
    const [longitude, latitude] = british.unproject({ crs: "EPSG:27700", easting, northing });
    return `Bombus pratorum,2015-04-03,${latitude.toFixed(decimals)},${longitude.toFixed(decimals)},10`;
  });
  return `scientificName,eventDate,decimalLatitude,decimalLongitude,coordinateUncertaintyInMeters\n${rows.join("\n")}\n`;
}

/** Forty points that stand nowhere in particular: steps of 1371 and 1733 m, which share no factor with a grid. */
const HONEST = Array.from({ length: 40 }, (_, index) => [530_127 + 1371 * index, 170_271 + 1733 * index] as const);
const CENTRES = Array.from({ length: 40 }, (_, index) => [530_150 + 1300 * index, 170_250 + 1700 * index] as const);

describe("points on the centres of squares", () => {
  it("are taken for squares of 1 km and more wherever they stand", async () => {
    const { records } = await interpret(database(), {
      walks: points([...HONEST, [535_000, 185_000], [533_000, 185_000], [533_500, 185_500]]),
    });
    const last = records.slice(-3);
    expect(last.map(({ in_disguise }) => in_disguise)).toEqual([true, true, true]);
    expect(last.map(({ hectad, tetrad }) => [hectad, tetrad])).toEqual([
      ["TQ38", null],
      ["TQ38", "TQ38H"],
      ["TQ38", "TQ38H"],
    ]);
    expect(last[0]?.tetrad_reason).toBe("named a square of 10 km");
  });

  it("are taken for squares of 100 m only where their source is full of them", async () => {
    const { records } = await interpret(database(), {
      full: points(CENTRES),
      honest: points([...HONEST, ...CENTRES.slice(0, 4)]),
    });
    const disguised = (source: string) =>
      records.filter((record) => record.source === source && record.in_disguise).length;
    expect(disguised("full")).toBe(40);
    expect(disguised("honest")).toBe(0);
  });

  it("written as eastings and northings are taken for 10 km only where their source is full of them", async () => {
    const file = (metres: readonly (readonly [number, number])[]) =>
      `scientificName,eventDate,easting,northing\n${metres.map(([east, north]) => `Bombus pratorum,1980,${east},${north}\n`).join("")}`;
    const centres = Array.from({ length: 12 }, (_, index) => [415_000 + 10_000 * index, 225_000] as const);
    const sources = { full: { crs: "EPSG:27700" }, few: { crs: "EPSG:27700" } };
    const { records } = await interpret(
      database(),
      {
        full: file(centres),
        few: file([
          [534_000, 185_000],
          [415_000, 225_000],
        ]),
      },
      { sources },
    );
    expect(records.filter(({ source, tetrad }) => source === "full" && tetrad !== null)).toEqual([]);
    expect(records.filter(({ source }) => source === "few").map(({ tetrad }) => tetrad)).toEqual(["TQ38M", "SP12M"]);
  });
});

describe("a point near a line of the 2 km grid", () => {
  it("is marked, for the transform may be off by as much", async () => {
    const { records } = await interpret(database(), {
      walks: points(
        [
          [534_003, 185_123],
          [534_123, 185_123],
        ],
        7,
      ),
    });
    expect(records.map(({ near_line }) => near_line)).toEqual([true, false]);
  });

  it("in Ireland is so within 0.4 m only, as good as the official polynomial is", async () => {
    const irish = gridNamed("irish");
    const rows = [316_003, 316_000.2].map((easting) => {
      const [longitude, latitude] = irish.unproject({ crs: "EPSG:29903", easting, northing: 234_671 });
      return `Bombus pratorum,2015,${latitude.toFixed(8)},${longitude.toFixed(8)}\n`;
    });
    const { records } = await interpret(database(), {
      walks: `scientificName,eventDate,decimalLatitude,decimalLongitude\n${rows.join("")}`,
    });
    expect(records.map(({ near_line }) => near_line)).toEqual([false, true]);
  });
});
