import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type AtlasShare,
  expectedChance,
  expectedGain,
  type Surrounding,
} from "../../../src/measures/neighbourhood/expected-chance.ts";

const ATLAS: AtlasShare = { squares: 10, squares_with: 3, visits: 50, recording: 10 };
/** Eight squares' weight around, of which five and a quarter hold it; 60 visits to those, 12 recording it. */
const AROUND: Surrounding = {
  ...{ weight_near: 320, weight_with: 210, weighted_visits: 2400, weighted_recording: 480, visits_here: 7 },
};

describe("expectedChance", () => {
  it("gives what R gives from its binomial: a Beta mean and Bayes' theorem", () => {
    // R 4: psi <- (0.3 + 5.25) / (1 + 8); p <- (5 * 0.2 + 12) / (5 + 60); m <- dbinom(0, 7, p); psi * m / (1 - psi + psi * m)
    const { share, frequency, chance } = expectedChance(AROUND, ATLAS, 5);
    expect(share).toBeCloseTo(0.616666666667, 10);
    expect(frequency).toBeCloseTo(0.2, 10);
    expect(chance).toBeCloseTo(0.252262614317, 10);
  });

  it("is the share itself where nobody has been, by hand", () => {
    // Three squares at 40 km of weight, two with it, the atlas at one half: (2 + 0.5) / (3 + 1).
    const nobody = { ...AROUND, weight_near: 120, weight_with: 80, visits_here: 0 };
    expect(expectedChance(nobody, { ...ATLAS, squares_with: 5 }, 5)).toMatchObject({ share: 0.625, chance: 0.625 });
  });

  it("speaks where no visit to a square that holds it was an everyday one", () => {
    const none = { ...AROUND, weighted_visits: 0, weighted_recording: 0, visits_here: 3 };
    const { frequency, share, chance } = expectedChance(none, { ...ATLAS, visits: 0, recording: 0 }, 5);
    expect(frequency).toBe(0);
    expect(chance).toBeCloseTo(share, 12);
  });

  const anyAtlas = fc
    .record({
      squares: fc.integer({ min: 1, max: 3000 }),
      visits: fc.nat(90_000),
      one: fc.nat(1000),
      two: fc.nat(1000),
    })
    .map(({ squares, visits, one, two }) => ({
      ...{ squares, visits, squares_with: Math.max(1, Math.round((squares * one) / 1000)) },
      recording: Math.round((visits * two) / 1000),
    }));
  const anySurrounding = fc
    .record({ near: fc.integer({ min: 1, max: 2000 }), visits: fc.nat(100_000), one: fc.nat(1000), two: fc.nat(1000) })
    .chain(({ near, visits, one, two }) =>
      fc.record({
        weight_near: fc.constant(near),
        weight_with: fc.constant(Math.round((near * one) / 1000)),
        weighted_visits: fc.constant(visits),
        weighted_recording: fc.constant(Math.round((visits * two) / 1000)),
        visits_here: fc.nat(300),
      }),
    );

  it("rises with a neighbour that holds it, falls with one that does not and with a visit that missed it", () => {
    fc.assert(
      fc.property(anySurrounding, anyAtlas, fc.integer({ min: 1, max: 40 }), (around, atlas, weight) => {
        const chanceOf = (changed: Partial<Surrounding>) => expectedChance({ ...around, ...changed }, atlas, 5).chance;
        const { weight_near, weight_with, visits_here } = around;
        const [now, tiny] = [chanceOf({}), 1e-12];
        expect(now).toBeGreaterThanOrEqual(0);
        expect(now).toBeLessThanOrEqual(1);
        expect(
          chanceOf({ weight_near: weight_near + weight, weight_with: weight_with + weight }) + tiny,
        ).toBeGreaterThanOrEqual(now);
        expect(chanceOf({ weight_near: weight_near + weight })).toBeLessThanOrEqual(now + tiny);
        expect(chanceOf({ visits_here: visits_here + 1 })).toBeLessThanOrEqual(now + tiny);
      }),
    );
  });
});

describe("expectedGain", () => {
  it("adds what R's binomial gives for three visits", () => {
    // R 4: sum(c(.6, .2, .9) * (1 - dbinom(0, 3, c(.25, .5, .05))))
    const taxa = [
      { chance: 0.6, frequency: 0.25 },
      { chance: 0.2, frequency: 0.5 },
      { chance: 0.9, frequency: 0.05 },
    ];
    expect(expectedGain(taxa, 3)).toBeCloseTo(0.6502375, 10);
  });

  it("is nothing for no visit, never falls with more, and never passes what is expected at all", () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const taxa = fc.array(fc.record({ chance: share, frequency: share }), { maxLength: 30 });
    fc.assert(
      fc.property(taxa, fc.nat(50), (own, visits) => {
        expect(expectedGain(own, 0)).toBe(0);
        expect(expectedGain(own, visits + 1) + 1e-12).toBeGreaterThanOrEqual(expectedGain(own, visits));
        const all = own.reduce((sum, { chance }) => sum + chance, 0);
        expect(expectedGain(own, visits)).toBeLessThanOrEqual(all + 1e-9);
      }),
    );
  });
});
