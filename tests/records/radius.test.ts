import { describe, expect, it } from "vitest";
import { generalisedRadius } from "../../src/records/radius.ts";
import { placed, position, refused, rules } from "./placing.ts";

const at = (more: Parameters<typeof position>[2] = {}, by = rules()) =>
  placed(position("52.25123", "-1.52345", more), by);
const radius = (place: ReturnType<typeof at>) =>
  place.shape.kind === "circle" ? [place.shape.radius, place.radiusFrom] : [];

describe("radius", () => {
  it("is the largest of record, source, digits and generalisation", () => {
    expect(radius(at())).toEqual([100, "default"]);
    expect(radius(at({ coordinateUncertaintyInMeters: "71" }))).toEqual([71, "stated"]);
    expect(radius(at({ coordinateUncertaintyInMeters: "707" }))).toEqual([707, "stated"]);
    expect(radius(at({ coordinateUncertaintyInMeters: "30" }, rules({ sourceUncertainty: 250 })))).toEqual([
      250,
      "source",
    ]);
    expect(radius(at({}, rules({ sourceUncertainty: 25 })))).toEqual([25, "source"]);
  });

  it("of zero is none, as Darwin Core has it, and a note says so", () => {
    const place = at({ coordinateUncertaintyInMeters: "0" });
    expect(radius(place)).toEqual([100, "default"]);
    expect(place.notes).toMatchObject([
      { check: "uncertainty_out_of_range", field: "coordinateUncertaintyInMeters", value: "0", severity: "note" },
    ]);
    for (const value of ["-5", "about 50", "0.5", "99999999999"])
      expect(at({ coordinateUncertaintyInMeters: value }).notes).toHaveLength(1);
  });

  it("with a comma that may part thousands is the larger number, and a note says so", () => {
    const place = at({ coordinateUncertaintyInMeters: "1,000" });
    expect(radius(place)).toEqual([1000, "stated"]);
    expect(place.notes).toMatchObject([{ check: "uncertainty_with_comma", value: "1,000" }]);
    expect(radius(at({ coordinateUncertaintyInMeters: "100,5" }))).toEqual([100.5, "stated"]);
  });

  it("is at least half the diagonal of the cell a record was coarsened to", () => {
    // Chapman and Wieczorek 2020: a 10 km square as a circle is 7071 m, a kilometre square 707 m.
    expect(
      radius(at({ dataGeneralizations: "coarsened to a 10 km grid", coordinateUncertaintyInMeters: "10" })),
    ).toEqual([expect.closeTo(7071.07, 1), "generalisation"]);
    expect(generalisedRadius("1km square")).toBeCloseTo(707.11, 1);
    expect(generalisedRadius("100 m")).toBeCloseTo(70.71, 1);
    expect(generalisedRadius("0,1 degree")).toBeGreaterThan(7000);
    expect(generalisedRadius("moved at random")).toBeUndefined();
    expect(generalisedRadius("10 kmph")).toBeUndefined();
    expect(generalisedRadius("1,000 m")).toBeCloseTo(707.11, 1);
    expect(generalisedRadius("1 000 m")).toBeCloseTo(707.11, 1);
    expect(generalisedRadius("from 100 m to 10 km")).toBeCloseTo(7071.07, 1);
    expect(generalisedRadius("0 km")).toBeUndefined();
  });

  it("of a coarsened place without a size is unknown: the record waits for a person", () => {
    expect(refused(position("52.25123", "-1.52345", { dataGeneralizations: "moved at random" }))).toMatchObject({
      check: "generalised_without_size",
      severity: "blocks",
      value: "moved at random",
    });
  });
});
