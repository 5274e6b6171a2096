import { expect, it } from "vitest";
import { useDatabase } from "../../records/reading.ts";
import { asked, listed } from "../asking.ts";

const database = useDatabase();
const CHECKS = ["default_date", "date_heaping"];
const on = (days: readonly string[]) => days.map((day, index) => listed({ id: `a${index}`, day }));
const count = (found: readonly string[], check: string) => found.filter((one) => one.endsWith(check)).length;

it("asks about 1 January where a source has several and none around it", async () => {
  const found = await asked(
    database(),
    on(["2010-01-01", "2011-01-01", "2012-01-01", "2011-07-12", "2011-07-13"]),
    CHECKS,
  );
  expect(found).toEqual(["2: default_date", "3: default_date", "4: default_date"]);
});

it("lets a single New Year's walk, and many in a mild January, alone", async () => {
  expect(await asked(database(), on(["2010-01-01", "2011-07-12"]), CHECKS)).toEqual([]);
  const mild = Array.from({ length: 8 }, (_, index) => `2010-01-0${index + 1}`);
  expect(await asked(database(), on([...mild, ...mild]), CHECKS)).toEqual([]);
});

it("asks about a day with far more lists than its neighbours year after year, unless a campaign explains it", async () => {
  // 20 on 1 May against 14 in the week on either side, 1 a day: 20 times as many, by chance one in 10¹⁸ or less.
  const firsts = Array.from({ length: 20 }, (_, index) => `${1995 + index}-05-01`);
  const days = [...firsts, ...Array.from({ length: 7 }, (_, index) => `2011-04-${24 + index}`)];
  const rows = on([...days, ...Array.from({ length: 7 }, (_, index) => `2011-05-0${index + 2}`)]);
  const found = await asked(database(), rows, CHECKS);
  expect([found.length, count(found, "date_heaping")]).toEqual([20, 20]);
  const campaign = { sources: { walks: { project: "May count" } } };
  expect(await asked(database(), rows, CHECKS, campaign)).toEqual([]);
});

it("lets the one great day of a small source alone", async () => {
  expect(await asked(database(), on(Array(20).fill("2011-05-01")), CHECKS)).toEqual([]);
});

it("asks about the days on which calendars of programs begin", async () => {
  expect(await asked(database(), on(["1899-12-30", "1900-01-01", "1904-01-01", "1900-01-02"]), CHECKS)).toEqual([
    "2: default_date",
    "3: default_date",
    "4: default_date",
  ]);
});
