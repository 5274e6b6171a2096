import { describe, expect, it } from "vitest";
import { FLIGHT_HEIGHT, flightChart } from "../../../../src/site/components/charts/flight-chart.ts";

const at = (places: Record<number, number>) => Array.from({ length: 36 }, (_, third) => places[third] ?? 0);
/** Left edge and top of each bar, read back from the path: the first from its place, each next from the one before. */
const bars = (path: string) => {
  let x = 0;
  return [...path.matchAll(/(M|m)([\d.]+) (?:60|0)V([\d.]+)h\.?[\d.]+V60z/g)].map(([, move, dx, y]) => {
    x = move === "M" ? Number(dx) : x + Number(dx);
    return [x, Number(y)];
  });
};

describe("flightChart", () => {
  it("draws shares of the year on one scale, the fullest third to the headroom", () => {
    const visits = Array.from({ length: 36 }, () => 1000);
    const { rows } = flightChart([at({ 10: 3, 11: 1 }), at({ 20: 500, 21: 500 })], visits, 150);
    // Shares 3/4 and 1/4, then 1/2 and 1/2, over 56 units of height above the base line at 60.
    expect(bars(rows[0]?.solid ?? "")).toEqual([
      [10.15, 4],
      [11.15, 41.3],
    ]);
    expect(bars(rows[1]?.solid ?? "")).toEqual([
      [20.15, 22.7],
      [21.15, 22.7],
    ]);
  });
  it("opens the bars of thirds with too few visits, and draws every record once", () => {
    const visits = at({ 10: 149, 11: 150 });
    const [row] = flightChart([at({ 10: 5, 11: 5, 12: 5 })], visits, 150).rows;
    expect(bars(row?.open ?? "").map(([x]) => x)).toEqual([10.15, 12.15]);
    expect(bars(row?.solid ?? "").map(([x]) => x)).toEqual([11.15]);
  });
  it("steps through all 36 thirds and closes on the base line", () => {
    const { effortArea, effortLine } = flightChart(
      [],
      Array.from({ length: 36 }, () => 7),
      150,
    );
    expect(effortArea.match(/h1/g)).toHaveLength(36);
    expect(effortArea.endsWith(`h1V${FLIGHT_HEIGHT}z`)).toBe(true);
    expect(effortLine.endsWith("h1")).toBe(true);
  });
  it("draws nothing, and no NaN, without records or visits", () => {
    const chart = flightChart([at({})], at({}), 150);
    expect(chart.rows).toEqual([{ solid: "", open: "" }]);
    expect(JSON.stringify(chart)).not.toContain("NaN");
  });
});
