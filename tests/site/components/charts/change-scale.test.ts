import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ChangeRow } from "../../../../src/publishing/contracts.ts";
import { changeScale } from "../../../../src/site/components/charts/change-scale.ts";

function row(earlier: number, net: number, low: number, high: number, judged = true): ChangeRow {
  return {
    resolution_m: 10_000,
    territory: "all",
    from_period: "a",
    to_period: "b",
    comparable: earlier,
    retained: earlier,
    gained: Math.max(0, net),
    lost: 0,
    net,
    net_percent: (100 * net) / earlier,
    interval_low: low,
    interval_high: high,
    minimum_visits: 5,
    turnover: null,
    turnover_low: null,
    turnover_high: null,
    recorded_both_not_covered: 0,
    recorded_both_unsettled: 0,
    stricter: null,
    not_comparable_since: 0,
    not_comparable_before: 0,
    covered_both_no_record: 0,
    covered_one_no_record: 0,
    covered_neither: 0,
    judged,
    reason: "",
  };
}

describe("changeScale", () => {
  it("sets a halving as far from no change as a doubling", () => {
    const rows = [row(100, 100, 90, 100), row(100, -50, -50, -40)];
    const scale = changeScale(rows);
    const [doubled, halved] = rows.map((each) => scale.mark(each)?.at ?? Number.NaN);
    expect((doubled ?? 0) - scale.zero).toBeCloseTo(scale.zero - (halved ?? 0), 9);
    expect(scale.ticks.map(({ label }) => label)).toEqual(["−50 %", "0", "+100 %"]);
    expect(scale.ticks.map(({ at }) => at)).toEqual([halved, scale.zero, doubled]);
  });
  it("names the direction only where the whole interval lies on one side", () => {
    const scale = changeScale([row(100, 10, -5, 25)]);
    expect(
      [row(100, 10, -5, 25), row(100, 10, 0, 25), row(100, 10, 1, 25), row(100, -10, -25, -1)].map(
        (each) => scale.mark(each)?.kind,
      ),
    ).toEqual(["none", "none", "more", "fewer"]);
  });
  it("has no mark for what cannot be judged, nor for a start from nothing", () => {
    const scale = changeScale([]);
    expect(scale.mark(row(100, 1, 0, 2, false))).toBeUndefined();
    expect(scale.mark(row(0, 30, 20, 40))).toBeUndefined();
    expect(scale.zero).toBe(50);
  });
  it("keeps every interval inside the chart and in order", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 3000 }),
        fc.integer({ min: -3000, max: 3000 }),
        fc.nat(3000),
        (earlier, net, half) => {
          const one = row(earlier, Math.max(-earlier, net), net - half, net + half);
          const mark = changeScale([one]).mark(one);
          const places = [0, mark?.from ?? 0, mark?.at ?? 0, mark?.to ?? 0, 100];
          expect(places).toEqual(places.toSorted((first, second) => first - second));
        },
      ),
    );
  });
});
