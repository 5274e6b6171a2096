import { describe, expect, it } from "vitest";
import { bodyPlan } from "../../../../src/site/components/identify/body-plan.ts";
import { placeFigure, ROW } from "../../../../src/site/components/identify/leaders.ts";

const plan = bodyPlan("bee");
const rows = plan?.rows ?? [];

describe("placeFigure", () => {
  it("ends each leader in the middle of its row", () => {
    for (const shown of [rows, rows.slice(3), rows.filter((_, index) => index % 2 === 0)]) {
      const { path, height } = placeFigure(shown, plan?.height ?? 0);
      const ends = [...path.matchAll(/L137 (\d+)h9/g)].map(([, y]) => Number(y));
      expect(ends).toEqual(shown.flatMap(({ ring }, index) => (ring === undefined ? [] : [index * ROW + ROW / 2])));
      expect(height).toBe(shown.length * ROW);
    }
  });
  it("keeps rings on the figure, left of the names", () => {
    const { rings, height } = placeFigure(rows, plan?.height ?? 0);
    for (const [x, y] of rings) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(137);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(height);
    }
  });
});

describe("bodyPlan", () => {
  it("defines every shape that figure and small body use", () => {
    const ids = new Set([...(plan?.shapes.matchAll(/ id="([^"]+)"/g) ?? [])].map(([, id]) => id));
    for (const { shape } of [...(plan?.figure ?? []), ...(plan?.mini ?? [])]) expect(ids).toContain(shape);
    const used = [...(plan?.shapes.matchAll(/(?:href="|url\()#([^")]+)/g) ?? [])].map(([, id]) => id);
    expect(used.filter((id) => !ids.has(id))).toEqual([]);
  });
  it("is none for a scheme without one", () => {
    expect(bodyPlan("")).toBeUndefined();
  });
});
