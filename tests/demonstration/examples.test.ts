import { describe, expect, it } from "vitest";
import { dayOf, isoDate, partsOf } from "../../scripts/demonstration/calendar.ts";
import { casteCells, mixedCastes } from "../../scripts/demonstration/castes-as-written.ts";
import { spreadOverYears } from "../../scripts/demonstration/effort.ts";
import { readLand } from "../../scripts/demonstration/land.ts";
import { epithetOf } from "../../scripts/demonstration/names-as-written.ts";
import { smooth } from "../../scripts/demonstration/noise.ts";
import { referenceOf } from "../../scripts/demonstration/places-as-written.ts";
import { hashed, randomStream } from "../../scripts/demonstration/random.ts";
import { mainCaste, total } from "../../scripts/demonstration/sightings.ts";
import { numbered } from "../../scripts/demonstration/source.ts";
import { indexOfSpecies } from "../../scripts/demonstration/species.ts";
import { epochOf } from "../../scripts/demonstration/truth.ts";
import { inventWorld } from "../../scripts/demonstration/world.ts";
import { quoted } from "../../scripts/demonstration/write.ts";

describe("examples", () => {
  it("of days", () => {
    expect(dayOf(1970, 2, 1)).toBe(31);
    expect(partsOf(31)).toEqual({ year: 1970, month: 2, date: 1, dayOfYear: 32 });
    expect(isoDate(31)).toBe("1970-02-01");
    expect(partsOf(dayOf(2000, 12, 31)).dayOfYear).toBe(366);
    expect(isoDate(dayOf(1890, 3, 1) - 1)).toBe("1890-02-28");
    expect(epochOf(1990)).toBe(1);
  });

  it("of castes", () => {
    expect(mixedCastes({ queen: 1, worker: 3, male: 1 })).toBe("1q 3w, m");
    const unstated = casteCells({ queen: 1, worker: 3 }, 0, randomStream(1, "any"));
    expect(unstated.map(({ counts, caste }) => ({ counts, caste }))).toEqual([
      { counts: { queen: 1, worker: 3 }, caste: "" },
    ]);
    expect(mainCaste({ queen: 1, worker: 4 })).toBe("worker");
    expect(total({ queen: 1, worker: 4 })).toBe(5);
  });

  it("of rows and years", () => {
    expect(numbered("walk", 0)).toBe("invented-walk-000001");
    expect(quoted("a,b", ",")).toBe('"a,b"');
    expect(quoted('say "q"', ";")).toBe('"say ""q"""');
    expect(spreadOverYears(30, 2001, 2003, 1).get(2001)).toBe(10);
  });

  it("of species", () => {
    expect(indexOfSpecies("invented-terrestris")).toBe(0);
    expect(epithetOf(0)).toBe("terrestris");
    expect(() => indexOfSpecies("invented-dragon")).toThrow("no invented species invented-dragon");
  });

  it("of places", () => {
    expect(smooth(0, 0, 30, 7)).toBe(hashed(0, 0, 7));
    const land = readLand();
    expect(land.tetrads[0]?.hectad).toBe("HP40");
    const tetrad = land.tetradAt("britain", 538_000, 177_000);
    expect(tetrad && referenceOf({ tetrad, easting: 538_500, northing: 177_100 }, 10_000)).toBe("TQ37");
    expect(land.tetradAt("britain", 100, 100)).toBeUndefined();
    expect(inventWorld(1, "changing").people.towns).toHaveLength(150);
  });
});
