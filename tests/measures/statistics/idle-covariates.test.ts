import { expect, it } from "vitest";
import { fitWithoutIdle } from "../../../src/measures/statistics/idle-covariates.ts";
import { MANY, REFERENCE } from "./logistic-reference.ts";

it("leaves out what follows from the strata, the factor and the covariates before it, and fits the rest as R does", () => {
  const [lengths, waves] = MANY.covariates;
  if (lengths === undefined || waves === undefined) throw new Error("two covariates");
  const ofStratum = Float64Array.from(MANY.stratum ?? [], (stratum) => 2 * stratum);
  const ofOthers = lengths.map((value, row) => value - 3 * (waves[row] ?? 0));
  const covariates = [new Float64Array(lengths.length).fill(4), lengths, ofStratum, waves, ofOthers];
  const fitted = fitWithoutIdle({ ...MANY, covariates });
  if (typeof fitted === "string") throw new Error(fitted);
  expect(fitted.outcomes.covariates).toEqual([lengths, waves]);
  fitted.fit.effects.forEach((effect, index) => {
    expect(effect).toBeCloseTo(REFERENCE.many.effects[index] ?? Number.NaN, 8);
  });
});

it("says where the levels themselves follow from the strata", () => {
  const level = Int32Array.from(MANY.stratum ?? [], (stratum) => (stratum === 5 ? 1 : 0));
  expect(fitWithoutIdle({ ...MANY, level, levels: 2 })).toBe("collinear");
});
