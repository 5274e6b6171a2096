import { describe, expect, it } from "vitest";
import { brackets, firstDrawn, yearChart } from "../../../../src/site/components/charts/year-chart.ts";

const PERIODS = [
  { id: "a", label: "1990–1999", from: 1990, to: 1999 },
  { id: "b", label: "2000–2009", from: 2000, to: 2009 },
];

describe("yearChart", () => {
  it("scales records to their own largest year and visits to theirs", () => {
    const chart = yearChart(
      [
        { year: 2000, records: 4 },
        { year: 2002, records: 1 },
      ],
      [{ year: 2001, visits: 900 }],
      [],
    );
    expect(chart).toMatchObject({
      first: 2000,
      last: 2002,
      bars: "M0.15 100V4h.7V100zm2 0V76h.7V100z",
      provisional: "",
    });
    expect(chart?.effortLine).toBe("M0 100V100h1V4h1V100h1");
  });
  it("opens provisional years", () => {
    const chart = yearChart(
      [
        { year: 2000, records: 4 },
        { year: 2001, records: 4 },
      ],
      [],
      [2001],
    );
    expect([chart?.bars, chart?.provisional]).toEqual(["M0.15 100V4h.7V100z", "M1.15 100V4h.7V100z"]);
  });
  it("is nothing without records", () => {
    expect(yearChart([{ year: 2000, records: 0 }], [{ year: 2000, visits: 5 }], [])).toBeUndefined();
  });
});

describe("firstDrawn", () => {
  it("leaves twenty years before the first period that begins", () => {
    expect(firstDrawn(PERIODS)).toBe(1970);
    expect(firstDrawn([{ id: "o", label: "before 1990", from: null, to: 1989 }])).toBe(-Infinity);
  });
});

describe("brackets", () => {
  it("spans the periods and the years outside them without gap", () => {
    const made = brackets({ first: 1985, last: 2014 }, PERIODS, [
      { year: 1985, records: 2 },
      { year: 1999, records: 3 },
      { year: 2014, records: 5 },
    ]);
    expect(made.map(({ label, used, records }) => [label, used, records])).toEqual([
      ["1985–1989", false, 2],
      ["1990–1999", true, 3],
      ["2000–2009", true, 0],
      ["2010–2014", false, 5],
    ]);
    expect(made.map(({ from }) => from)).toEqual([0, ...made.slice(0, -1).map(({ to }) => to)]);
    expect(made.at(-1)?.to).toBe(100);
  });
  it("cuts a period open at the left to the years drawn, and leaves out one without years", () => {
    const open = [{ id: "o", label: "before 1990", from: null, to: 1989 }, ...PERIODS];
    expect(brackets({ first: 1980, last: 1999 }, open, []).map(({ label, from, to }) => [label, from, to])).toEqual([
      ["before 1990", 0, 50],
      ["1990–1999", 50, 100],
    ]);
    const years = [1907, 1985, 1991].map((year) => ({ year, records: 2 }));
    expect(brackets({ first: 1980, last: 1999 }, open, years).map(({ records }) => records)).toEqual([4, 2]);
  });
});
