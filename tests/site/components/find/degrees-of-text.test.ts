import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degreesOfText } from "../../../../src/site/components/find/degrees-of-text.ts";

describe("degreesOfText", () => {
  it("reads one position however it is written", () => {
    // 54° 58′ 42″ is 54 + 58/60 + 42/3600 = 54.978333; 1° 37′ 1″ is 1.616944, by hand.
    for (const text of [
      "54.978333, -1.616944",
      "54.978333 -1.616944",
      "54,978333; −1,616944",
      "54,978333, -1,616944",
      "54.978333N 1.616944W",
      "N 54.978333, W 1.616944",
      "1.616944 O, 54.978333 N",
      "54°58'42\"N 1°37'1\"W",
      "54° 58′ 42″ N, 1° 37′ 1″ O",
      "54°58’42”N/1°37’1”W",
    ]) {
      const read = degreesOfText(text);
      expect(read?.latitude, text).toBeCloseTo(54.978333, 5);
      expect(read?.longitude, text).toBeCloseTo(-1.616944, 5);
    }
  });

  it("reads no position where there is none", () => {
    for (const text of [
      "NZ26",
      "25 64",
      "54.978",
      "95.0, 1.0",
      "54.9N 1.6N",
      "-54.9S, 1.6W",
      "54°70'N 1°W",
      "buff-tailed",
      "12.5, 200.1",
    ])
      expect(degreesOfText(text), text).toBeUndefined();
  });

  it("gives back what was written", () => {
    const degree = (most: number) => fc.integer({ min: -most * 1000, max: most * 1000 }).map((number) => number / 1000);
    fc.assert(
      fc.property(degree(90), degree(180), (latitude, longitude) => {
        const read = degreesOfText(`${latitude.toFixed(3)}, ${longitude.toFixed(3)}`);
        expect(read?.latitude).toBeCloseTo(latitude, 6);
        expect(read?.longitude).toBeCloseTo(longitude, 6);
      }),
    );
  });
});
