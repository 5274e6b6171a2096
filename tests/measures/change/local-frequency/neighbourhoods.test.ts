import fc from "fast-check";
import { Geodesic } from "geographiclib-geodesic";
import { describe, expect, it } from "vitest";
import { neighbourhoods, neighbourWeight } from "../../../../src/measures/change/local-frequency/neighbourhoods.ts";
import { everRecorded } from "../../../../src/measures/change/presence.ts";
import { readReferenceFile } from "../../../support/reference.ts";
import { anyPresence } from "../any-presence.ts";

const { weight_formula_values } = readReferenceFile<{ weight_formula_values: { d: number; f: number; w: number }[] }>(
  "local-frequency.json",
);

describe("neighbourWeight", () => {
  it.each(weight_formula_values)("is $w at ranks $d and $f", ({ d, f, w }) => {
    // The reference prints floating-point numbers in full.
    expect(neighbourWeight(d, f, { nearest: 200, most_similar: 100 }) / w).toBeCloseTo(1, 12);
  });
});

describe("neighbourhoods", () => {
  it("finds the most alike of the nearest, as sorting all of them by geodesic distance does", () => {
    const places = fc.uniqueArray(fc.integer({ min: 0, max: 63 }), { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(anyPresence(), places, (presence, cells) => {
        // Steps that differ east and north, so that hardly two distances are the same.
        const positions = presence.squares.map((_, at) => {
          const cell = cells[at] as number;
          return { latitude: 50 + 0.09 * (cell % 8) + 0.0013 * at, longitude: 0.17 * Math.floor(cell / 8) };
        });
        const options = { nearest: 5, most_similar: 3 };
        const found = neighbourhoods(positions, presence, options);
        const ever = everRecorded(presence);
        const taxaOf = (square: number) =>
          presence.taxa.filter((_, taxon) => ever[square * presence.taxa.length + taxon] === 1);
        presence.squares.forEach((_, square) => {
          const metres = positions.map((to, at) =>
            at === square
              ? -1
              : (Geodesic.WGS84.Inverse(
                  positions[square]?.latitude as number,
                  positions[square]?.longitude as number,
                  to.latitude,
                  to.longitude,
                ).s12 as number),
          );
          const near = [...positions.keys()].sort((a, b) => (metres[a] as number) - (metres[b] as number)).slice(0, 5);
          // Sphere and ellipsoid may order two squares otherwise that are within a three hundredth equally far.
          const last = metres[near.at(-1) as number] as number;
          if (metres.some((one, at) => at !== near.at(-1) && Math.abs(one - last) < 0.004 * last)) return;
          const alike = (other: number) => {
            const [own, its] = [taxaOf(square), taxaOf(other)];
            const common = own.filter((taxon) => its.includes(taxon)).length;
            return own.length + its.length === 0 ? 0 : (2 * common) / (own.length + its.length);
          };
          const chosen = [...found.squares.subarray(found.starts[square], found.starts[square + 1])];
          expect(chosen[0]).toBe(square);
          expect(chosen.every((other) => near.includes(other))).toBe(true);
          const others = near.filter((other) => other !== square);
          const best = others
            .map(alike)
            .sort((a, b) => b - a)
            .slice(0, chosen.length - 1);
          expect(chosen.slice(1).map(alike)).toEqual(best);
        });
      }),
    );
  });
});
