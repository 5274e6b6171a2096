import { expect, it } from "vitest";
import { periodLabel } from "../../../../src/publishing/period-label.ts";
import { inPeriod } from "../../../../src/site/components/text/in-period.ts";

it("says when of every kind of period", () => {
  expect(inPeriod(periodLabel({ from: 1990, to: 2005 }))).toBe("in 1990–2005");
  expect(inPeriod(periodLabel({ from: 2024, to: 2024 }))).toBe("in 2024");
  expect(inPeriod(periodLabel({ from: null, to: 1989 }))).toBe("until 1989");
});
