import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { everRecorded, squaresInBoth, squaresOfTaxa } from "../../../src/measures/change/presence.ts";
import { anyPresence } from "./any-presence.ts";

describe("presence", () => {
  it("counts and pools as going through every record does", () => {
    fc.assert(
      fc.property(anyPresence(), (presence) => {
        const { taxa, squares, recorded } = presence;
        const at = (period: number, square: number, taxon: number) =>
          recorded[(period * squares.length + square) * taxa.length + taxon] === 1;
        const all = squares.flatMap((_, square) => taxa.map((_, taxon) => [square, taxon] as const));
        expect([...everRecorded(presence)]).toEqual(all.map(([s, t]) => Number(at(0, s, t) || at(1, s, t))));
        expect([...squaresOfTaxa(presence)]).toEqual(
          [0, 1].flatMap((period) => taxa.map((_, t) => squares.filter((_, s) => at(period, s, t)).length)),
        );
        expect(squaresInBoth(presence, 0, 1)).toEqual(
          [...squares.keys()].filter((s) => [0, 1].every((period) => taxa.some((_, t) => at(period, s, t)))),
        );
      }),
    );
  });
});
