import { describe, expect, it } from "vitest";
import {
  EXTENT_THRESHOLDS,
  OCCUPANCY_THRESHOLDS,
  smallestThresholdAbove,
} from "../../../src/measures/range/criterion-thresholds.ts";
import { rangeFigures } from "../../../src/measures/range/range-figures.ts";
import reference from "../../reference/range.json" with { type: "json" };

describe("thresholds of criterion B", () => {
  it("are those of IUCN (2012)", () => {
    const { EOO_B1, AOO_B2, operator } = reference.iucn_criterion_B_thresholds_km2;
    expect(EXTENT_THRESHOLDS).toEqual([EOO_B1.CR, EOO_B1.EN, EOO_B1.VU]);
    expect(OCCUPANCY_THRESHOLDS).toEqual([AOO_B2.CR, AOO_B2.EN, AOO_B2.VU]);
    expect(operator).toBe("<");
  });

  it("are passed by less alone, never by as much", () => {
    expect(
      [99.9, 100, 4_999.9, 5_000, 19_999.9, 20_000].map((km2) => smallestThresholdAbove(km2, EXTENT_THRESHOLDS)),
    ).toEqual([100, 5_000, 5_000, 20_000, 20_000, null]);
    expect([8, 12, 500, 2_000].map((km2) => smallestThresholdAbove(km2, OCCUPANCY_THRESHOLDS))).toEqual([
      10,
      500,
      2_000,
      null,
    ]);
    expect(smallestThresholdAbove(null, EXTENT_THRESHOLDS)).toBeNull();
  });
});

describe("rangeFigures", () => {
  const counts = { records: 20, held_back: 0, tetrads: 9, hectads: 9, hectads_without_tetrad: 0 };

  it("gives the worked area of occupancy: nine 2 km squares are 36 km²", () => {
    const { n_tetrads, aoo_km2 } = reference.aoo_example;
    expect(rangeFigures({ ...counts, tetrads: n_tetrads }, 250_814)).toEqual({
      occupancy_km2: aoo_km2,
      occupancy_reason: "",
      occupancy_below_km2: 500,
      extent_km2: 250_814,
      extent_reason: "",
      extent_raised: false,
      extent_below_km2: null,
    });
  });

  it("gives no area of occupancy of what is shown at 10 km, and no extent of what is withheld", () => {
    const shown = rangeFigures({ ...counts, tetrads: 0, held_back: 20 }, 812);
    expect(shown).toMatchObject({
      occupancy_km2: null,
      occupancy_reason: "its 2 km squares are not shown on purpose",
      extent_km2: 812,
    });
    const withheld = rangeFigures({ ...counts, tetrads: 0, hectads: 0, held_back: 20 }, null);
    expect(withheld).toMatchObject({ occupancy_km2: null, extent_km2: null, extent_reason: "its places are withheld" });
  });

  it("says why where no record reaches 2 km, 10 km, or none is established", () => {
    const reasons = (more: object) => {
      const { occupancy_reason, extent_reason } = rangeFigures({ ...counts, tetrads: 0, ...more }, null);
      return [occupancy_reason, extent_reason];
    };
    expect(reasons({ hectads: 0 })).toEqual([
      "no record is good enough to fill a 2 km square",
      "no record is good enough to fill a 10 km square",
    ]);
    expect(reasons({ records: 0, hectads: 0 })).toEqual(["no established record", "no established record"]);
    expect(reasons({})[1]).toBe("its squares lie too far apart for one convex polygon");
  });
});
