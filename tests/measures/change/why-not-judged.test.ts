import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { whyNotJudged } from "../../../src/measures/change/why-not-judged.ts";

const some = fc.nat(60);

describe("whyNotJudged", () => {
  it("is the example of its docstring", () => {
    expect(whyNotJudged({ retained: 9, gained: 4, lost: 6, squares_from: 15, squares_to: 13 }, 20)).toBe(
      "19 comparable squares; 20 are needed",
    );
  });

  it("judges exactly where enough squares are comparable, one of which held it before", () => {
    fc.assert(
      fc.property(some, some, some, fc.integer({ min: 1, max: 60 }), (retained, gained, lost, minimum) => {
        const squares = { retained, gained, lost, squares_from: retained + lost, squares_to: retained + gained };
        const enough = retained + gained + lost >= minimum && retained + lost > 0;
        expect(whyNotJudged(squares, minimum) === "").toBe(enough);
      }),
    );
  });
});
