import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ciede2000, type Lab, seen, VISIONS } from "./colour-difference.ts";

/** G. Sharma, W. Wu and E. N. Dalal (2005), table 1: pairs that reach every branch of the formula. */
const PAIRS: readonly (readonly [Lab, Lab, number])[] = [
  [[50, 2.6772, -79.7751], [50, 0, -82.7485], 2.0425],
  [[50, 3.1571, -77.2803], [50, 0, -82.7485], 2.8615],
  [[50, 2.8361, -74.02], [50, 0, -82.7485], 3.4412],
  [[50, -1.3802, -84.2814], [50, 0, -82.7485], 1],
  [[50, 0, 0], [50, -1, 2], 2.3669],
  [[50, -1, 2], [50, 0, 0], 2.3669],
  [[50, 2.49, -0.001], [50, -2.49, 0.0009], 7.1792],
  [[50, 2.49, -0.001], [50, -2.49, 0.001], 7.1792],
  [[50, 2.49, -0.001], [50, -2.49, 0.0011], 7.2195],
  [[50, 2.49, -0.001], [50, -2.49, 0.0012], 7.2195],
  [[50, -0.001, 2.49], [50, 0.0009, -2.49], 4.8045],
  [[50, -0.001, 2.49], [50, 0.0011, -2.49], 4.7461],
  [[50, 2.5, 0], [50, 0, -2.5], 4.3065],
  [[50, 2.5, 0], [73, 25, -18], 27.1492],
  [[50, 2.5, 0], [61, -5, 29], 22.8977],
  [[50, 2.5, 0], [56, -27, -3], 31.903],
  [[50, 2.5, 0], [58, 24, 15], 19.4535],
  [[60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644],
  [[63.0109, -31.0961, -5.8663], [62.8187, -29.7946, -4.0864], 1.263],
  [[22.7233, 20.0904, -46.694], [23.0331, 14.973, -42.5619], 2.0373],
  [[36.4612, 47.858, 18.3852], [36.2715, 50.5065, 21.2231], 1.4146],
  [[90.8027, -2.0831, 1.441], [91.1528, -1.6435, 0.0447], 1.4441],
  [[90.9257, -0.5406, -0.9208], [88.6381, -0.8985, -0.7239], 1.5381],
  [[6.7747, -0.2908, -2.4247], [5.8714, -0.0985, -2.2286], 0.6377],
  [[2.0776, 0.0795, -1.135], [0.9033, -0.0636, -0.5514], 0.9082],
];

describe("ciede2000", () => {
  it.each(PAIRS)("gives the published difference of %j and %j", (one, other, difference) => {
    expect(ciede2000(one, other)).toBeCloseTo(difference, 4);
    expect(ciede2000(other, one)).toBeCloseTo(difference, 4);
  });
  it("is 0 of a colour with itself, and never negative", () => {
    const part = fc.double({ min: -80, max: 80, noNaN: true });
    const lab = fc.tuple(fc.double({ min: 0, max: 100, noNaN: true }), part, part);
    fc.assert(
      fc.property(lab, lab, (one, other) => {
        expect(ciede2000(one, one)).toBeCloseTo(0, 6);
        expect(ciede2000(one, other)).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe("seen", () => {
  it("leaves white, black and greys as they are, however they are seen", () => {
    for (const vision of VISIONS)
      for (const [grey, lightness] of [
        ["#ffffff", 100],
        ["#000000", 0],
        ["#777777", 50.03],
      ] as const) {
        const [l, a, b] = seen(grey, vision);
        expect(l).toBeCloseTo(lightness, 1);
        expect(Math.hypot(a, b)).toBeLessThan(0.1);
      }
  });
  // L*a*b* of sRGB's red with the white of D65, as colour tables give it.
  it("gives the coordinates of red", () => {
    const [l, a, b] = seen("#ff0000", "normal");
    expect([l, a, b].map((value) => Math.round(value))).toEqual([53, 80, 67]);
  });
});
