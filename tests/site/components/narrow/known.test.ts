import { describe, expect, it } from "vitest";
import { answersOf, hashOf, knownOf } from "../../../../src/site/components/narrow/known.ts";
import { today } from "../../../../src/site/components/narrow/known-form.ts";
import { cornerAt } from "../../../../src/site/components/narrow/map-grids.ts";
import { oneIn, tenthsOf } from "../../../../src/site/components/narrow/odds.ts";
import { applyAffine } from "../../../../src/site/maps/affine.ts";

const offered = {
  states: new Map([
    ["tail", ["red", "white"]],
    ["antenna", ["3 equal to 5"]],
  ]),
  castes: ["queen"],
};
const known = {
  square: "NZ27",
  date: "2026-05-12",
  caste: "queen",
  states: new Map([
    ["tail", "unseen"],
    ["antenna", "3 equal to 5"],
  ]),
};

describe("the address of the page", () => {
  it("holds all that is known, and gives it back", () => {
    expect(knownOf(`#${hashOf(known)}`, offered)).toEqual(known);
    expect(hashOf({ square: "", date: "", caste: "", states: new Map() })).toBe("");
  });

  it("is read without what it does not understand", () => {
    expect(knownOf("#where=<b>NZ27&when=soon&caste=drone&tail=blue&nose=long", offered)).toEqual({
      ...{ square: "bNZ27", date: "", caste: "" },
      states: new Map(),
    });
  });

  it("gives the helper what was seen", () => {
    expect(answersOf(known)).toEqual({ caste: "queen", states: new Map([["antenna", "3 equal to 5"]]) });
  });
});

describe("odds", () => {
  it("are told in tenths: none below 1 in 20, all from 19 in 20", () => {
    expect([0, 0.049, 0.05, 0.14, 0.15, 0.71, 0.949, 0.95, 1].map(tenthsOf)).toEqual([0, 0, 1, 1, 2, 7, 9, 10, 10]);
    expect([0.0123, 0.04, 1e-9].map(oneIn)).toEqual([80, 30, 1e6]);
  });
});

describe("a point of the map", () => {
  it("lies in the square whose corner is at or below it on both axes, on a turned grid too", () => {
    const turned = { grid: "irish", matrix: [3.98, -0.3, -0.3, -3.98, 60, 500] as const };
    const [x, y] = applyAffine(turned.matrix, 21.5, 33.2);
    expect(cornerAt(turned, x, y)).toEqual([21, 33]);
    expect(cornerAt({ grid: "british", matrix: [4, 0, 0, -4, 80, 492] }, 250, 263)).toEqual([42, 57]);
  });
});

it("takes the day where the device is for today", () => {
  expect(today(new Date(2026, 4, 9, 23, 59))).toBe("2026-05-09");
});
