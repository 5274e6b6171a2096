import { describe, expect, it } from "vitest";
import { BODY_PLANS } from "../../../../src/scheme/body-plans.ts";
import { type BodyPlan, bodyPlan, planIds, rowsOfPlans } from "../../../../src/site/components/identify/body-plan.ts";
import { saysBody } from "../../../../src/site/components/identify/body-says.ts";
import { partName } from "../../../../src/site/components/identify/body-words.ts";
import { isSegment, placeFigure, ROW } from "../../../../src/site/components/identify/leaders.ts";
import { markShapes } from "../../../../src/site/components/identify/marks.ts";
import { MARKS } from "../../../../src/site/components/identify/part-state.ts";

const PLANS = planIds().flatMap((id) => bodyPlan(id) ?? []);
/** Rows that have a shape only where they are told: the ring of a bee's eyes and antennae points at shapes of one colour. */
const WITHOUT_COLOUR = ["eyes", "antennae"];

const idsIn = (svg: string) => [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id ?? "");
const usedIn = (svg: string) => [...svg.matchAll(/(?:href="|url\()#([^")]+)/g)].map(([, id]) => id ?? "");
const clips = ({ figure, mini }: BodyPlan) => [...figure, ...mini].flatMap(({ clip }) => clip ?? []);

describe.each(PLANS.map((plan) => [plan.id, plan] as const))("the %s", (id, plan) => {
  it("has the rows that settings and characters know", () => {
    expect(plan.rows.map((row) => row.id)).toEqual(BODY_PLANS[id as keyof typeof BODY_PLANS]);
  });
  it("defines every shape once, all its own, and uses no other", () => {
    const [own, marks] = [idsIn(plan.shapes), idsIn(markShapes(plan.marks))];
    expect(own.length).toBe(new Set(own).size);
    expect(own.filter((name) => !name.startsWith(`${id}-`))).toEqual([]);
    const known = new Set([...own, ...marks]);
    const used = [...usedIn(plan.shapes), ...[...plan.figure, ...plan.mini].map(({ shape }) => shape), ...clips(plan)];
    expect(used.filter((name) => !known.has(name))).toEqual([]);
  });
  it("draws each row, or points at what has no colour of its own", () => {
    const drawn = new Set(plan.figure.map(({ row }) => row));
    expect(plan.rows.filter((row) => !drawn.has(row.id) && !WITHOUT_COLOUR.includes(row.id))).toEqual([]);
    expect(plan.rows.filter(({ ring }) => ring === undefined).map((row) => row.id)).toEqual(["wings"]);
    expect(
      plan.figure.flatMap(({ row }) => (row === undefined || plan.rows.some((one) => one.id === row) ? [] : [row])),
    ).toEqual([]);
  });
  it("has no colour in its shapes, so that classes give it", () => {
    expect(plan.shapes).not.toMatch(/fill="#|stroke="|style=|fill="[a-z]/);
  });
  it("ends each leader in the middle of its row, from a ring on the figure, and leaders do not swap places", () => {
    for (const shown of [plan.rows, plan.rows.slice(3), plan.rows.filter((_, index) => index % 2 === 0)]) {
      const { path, rings, height } = placeFigure(shown, plan);
      const ends = [...path.matchAll(/L\d+ (\d+)h9/g)].map(([, y]) => Number(y));
      expect(ends).toEqual(shown.flatMap(({ ring }, index) => (ring === undefined ? [] : [index * ROW + ROW / 2])));
      expect(height).toBe(shown.length * ROW);
      for (const [x, y] of rings) {
        expect(x).toBeGreaterThan(0);
        expect(x).toBeLessThan(plan.width - 9);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(height);
      }
    }
    const body = plan.rows
      .filter((row) => row.id !== "hind-leg")
      .flatMap(({ ring }) => (ring === undefined ? [] : [ring[1]]));
    expect(body).toEqual([...body].sort((one, other) => one - other));
  });
  it("names its parts in words, its segments by number", () => {
    for (const row of plan.rows)
      expect(partName(row.id, saysBody), row.id).toMatch(isSegment(row.id) ? /^[ST]\d+$/ : /^[a-z][a-z -]+$/);
  });
});

describe("several plans", () => {
  it("are found by id; a scheme may have none", () => {
    expect(planIds()).toEqual(Object.keys(BODY_PLANS));
    expect(bodyPlan("")).toBeUndefined();
  });
  it("can stand on one page: no id is given twice", () => {
    const ids = [...PLANS.flatMap(({ shapes }) => idsIn(shapes)), ...idsIn(markShapes(MARKS))];
    expect(ids.length).toBe(new Set(ids).size);
  });
  it("can stand side by side on rows laid together", () => {
    const [bee, hoverfly, damselfly] = PLANS;
    if (bee === undefined || hoverfly === undefined || damselfly === undefined) throw new Error("a plan is missing");
    expect(rowsOfPlans([bee, hoverfly]).map(({ id }) => id)).toEqual(bee.rows.map(({ id }) => id));
    const both = rowsOfPlans([hoverfly, damselfly]).map(({ id }) => id);
    expect(both.length).toBe(new Set(both).size);
    expect(both).toEqual(expect.arrayContaining([...damselfly.rows, ...hoverfly.rows].map(({ id }) => id)));
    expect(rowsOfPlans([])).toEqual([]);
  });
  it("draw marks in a box of 20 by 20", () => {
    const numbers = [...markShapes(MARKS).matchAll(/ d="([^"]+)"/g)].flatMap(
      ([, d]) => d?.match(/-?\d+(\.\d+)?/g) ?? [],
    );
    for (const number of numbers) expect(Math.abs(Number(number))).toBeLessThanOrEqual(22);
  });
});
