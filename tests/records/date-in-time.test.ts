import { describe, expect, it } from "vitest";
import { isDateRefusal } from "../../src/dates/interval.ts";
import { readDate } from "../../src/dates/read-date.ts";
import { type DatingRules, otherwiseOf, placedInTime } from "../../src/records/date-in-time.ts";
import { interpret } from "./interpreting.ts";
import { useDatabase } from "./reading.ts";

const rules: DatingRules = {
  intervalEnd: "inclusive",
  format: "iso",
  periods: [
    { id: "earlier", from: null, to: 1999 },
    { id: "later", from: 2000, to: 2020 },
  ],
  lastDay: 20_000,
};

function read(eventDate: string) {
  const answer = readDate({ eventDate }, rules);
  if (isDateRefusal(answer)) throw new Error(answer.refused);
  return answer;
}

describe("an interval in time", () => {
  it("counts in the period and the third of a month that hold all of it", () => {
    const at = (text: string) =>
      [placedInTime(read(text).interval, rules)].map(({ period, third }) => [period, third])[0];
    expect(at("1998-07-12")).toEqual([0, 19]);
    expect(at("2007-11-13/15")).toEqual([1, 31]);
    expect(at("2007-11-19/21")).toEqual([1, null]);
    expect(at("1999-12-30/2000-01-02")).toEqual([null, null]);
  });

  it("is told of only where the other reading of its end would count otherwise", () => {
    const told = (text: string) => otherwiseOf(read(text), rules) !== null;
    // Both readings in the second third of November; then past its end, to one day, and past the century.
    expect(["2007-11-13/15", "1965/1985", "2007-11-19/21", "2007-11-13/14", "1999-12-30/2000-01-01"].map(told)).toEqual(
      [false, false, true, true, true],
    );
  });
});

describe("the finding on it", () => {
  const database = useDatabase();

  it("comes once a source, with how many records it is about", async () => {
    const rows = ["2007-11-19/21", "2007-11-13/15", "2007-11-13/14", "2007-11-19/21", "2007-11-19"];
    const text = `scientificName,eventDate,gridReference\n${rows.map((date) => `Bombus pratorum,${date},TQ3877`).join("\n")}\n`;
    const { findings } = await interpret(database(), { walks: text, museum: text.replace("13/14", "13/15") });
    const told = findings.filter(({ check_name }) => check_name === "date_interval_end");
    expect(told.map(({ row, message }) => [row, message.slice(0, 9)])).toEqual([
      [2, "3 records"],
      [2, "2 records"],
    ]);
    expect(told[0]?.value).toBe("2007-11-19/21 is read as 2007-11-19/2007-11-21, otherwise 2007-11-19/2007-11-20");
  });
});
