import fc from "fast-check";
import { expect, it } from "vitest";
import { contrast } from "../../../../src/site/components/design/contrast.ts";

// Black on white is 21:1 by definition; #767676 on white is 4.54:1, the lightest grey that WCAG 2.2 lets text have.
it("gives the ratios of WCAG 2.2", () => {
  expect(contrast("#000", "#ffffff")).toBe(21);
  expect(contrast("#767676", "#fff")).toBeCloseTo(4.54, 2);
  expect(contrast("#777777", "#fff")).toBeLessThan(4.5);
});

it("is the same either way round, and 1 of a colour with itself", () => {
  const colour = fc.integer({ min: 0, max: 0xffffff }).map((number) => `#${number.toString(16).padStart(6, "0")}`);
  fc.assert(
    fc.property(colour, colour, (one, other) => {
      expect(contrast(one, other)).toBe(contrast(other, one));
      expect(contrast(one, one)).toBe(1);
      expect(contrast(one, other)).toBeLessThanOrEqual(21);
    }),
  );
});
