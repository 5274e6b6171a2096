import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { SeriesRow } from "../../../../src/publishing/contracts.ts";
import { seriesChart } from "../../../../src/site/components/figures/series-chart.ts";
import {
  seriesNumber,
  seriesOf,
  seriesSentence,
  whyNoPoint,
} from "../../../../src/site/components/figures/series-words.ts";

function point(time: string, estimate: number | null, unit: SeriesRow["unit"] = "year"): SeriesRow {
  return {
    method: "reporting_rate",
    unit,
    time,
    n: 40,
    estimate,
    low: estimate === null ? null : estimate - 1,
    high: estimate === null ? null : estimate + 1,
    provisional: false,
  };
}

describe("whyNoPoint", () => {
  it("does not say too few of lists that are all alike", () => {
    expect(whyNoPoint("reporting_rate")).toBe("too few lists, or too much alike");
    expect(whyNoPoint("squares_compared")).toBe("too few squares");
  });
});

describe("seriesChart", () => {
  it("keeps every mark in the chart, intervals around it, and years at their distance", () => {
    const value = fc.double({ min: -1e3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.option(value), { minLength: 2, maxLength: 40 }), (values) => {
        const rows = values.map((estimate, index) => point(String(1980 + 2 * index), estimate));
        const chart = seriesChart(rows, new Map());
        expect(chart === undefined).toBe(values.every((estimate) => estimate === null));
        const marks = chart?.marks ?? [];
        expect(marks).toHaveLength(chart === undefined ? 0 : rows.length);
        for (const [index, { x, at, low, high }] of marks.entries()) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(100);
          expect(at === undefined).toBe(values[index] === null);
          if (at === undefined || low === undefined || high === undefined) continue;
          expect(high).toBeLessThanOrEqual(at);
          expect(at).toBeLessThanOrEqual(low);
          for (const y of [at, low, high]) {
            expect(y).toBeGreaterThanOrEqual(0);
            expect(y).toBeLessThanOrEqual(100);
          }
        }
        const steps = marks.slice(1).map(({ x }, index) => x - (marks[index]?.x ?? 0));
        for (const step of steps) expect(Math.abs(step - (steps[0] ?? 0))).toBeLessThanOrEqual(0.21);
      }),
    );
  });
  it("names periods by their labels and begins at 0", () => {
    const chart = seriesChart([point("p1", 4, "period"), point("p2", 8, "period")], new Map([["p1", "1990–2005"]]));
    expect(chart?.times.map(({ label }) => label)).toEqual(["1990–2005", "p2"]);
    expect(chart?.values[0]).toEqual({ label: "0", y: 96 });
  });
});

describe("series in words", () => {
  it("leaves out a series without a figure and counts the years that have one", () => {
    expect(seriesOf([point("1999", null)])).toEqual([]);
    const series = seriesOf([point("1999", null), point("2000", 3), point("p1", 3, "period")]);
    expect(series.map(({ unit }) => unit)).toEqual(["year", "period"]);
    expect(seriesSentence(series)).toBe("**1 of 2 years** has enough to say; the others are dotted.");
    expect(seriesSentence(seriesOf([point("2000", 3)]))).toBe("The **one year** has enough to say.");
  });
  it("gives three figures that count", () => {
    expect([0.123456, 1.5, 23.456, 1234.5].map(seriesNumber)).toEqual(["0.12", "1.50", "23.5", "1,235"]);
  });
});
