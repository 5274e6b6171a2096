import { daysInMonth, isLeapYear } from "../../dates/calendar.ts";
import { complies, lacks, type Response } from "./response.ts";
import { integerIn, isEmpty, type StandardTest, standardTest, type TermTexts } from "./standard-test.ts";

/** The year the Gregorian calendar began, the draft's default. */
const EARLIEST_YEAR = 1582;

/** The tests of the terms year, month and day. */
export const CALENDAR_TESTS: readonly StandardTest[] = [
  standardTest({
    guid: "ad0c8855-de69-4843-a80c-a5387d20fbc8",
    label: "VALIDATION_YEAR_INRANGE",
    actsOn: ["year"],
    run: (record, { today }) => {
      const year = integerIn(record["year"]);
      if (year === undefined) return lacks("year is no whole number");
      return complies(year >= EARLIEST_YEAR && year <= Number(today.slice(0, 4)), "year is 1582 to the present one");
    },
  }),
  wholeNumber("01c6dafa-0886-4b7e-9881-2c3018c98bdc", "VALIDATION_MONTH_STANDARD", "month", 12),
  wholeNumber("47ff73ba-0028-4f79-9ce1-ee7008d66498", "VALIDATION_DAY_STANDARD", "day", 31),
  standardTest({
    guid: "8d787cb5-73e2-4c39-9cd1-67c7361dc02e",
    label: "VALIDATION_DAY_INRANGE",
    actsOn: ["day", "month", "year"],
    run: dayInRange,
  }),
];

function wholeNumber(guid: string, label: string, term: string, most: number): StandardTest {
  return standardTest({
    guid,
    label,
    actsOn: [term],
    run: (record) => {
      if (isEmpty(record[term])) return lacks(`${term} is empty`);
      const value = integerIn(record[term]) ?? 0;
      return complies(value >= 1 && value <= most, `${term} is a whole number from 1 to ${most}`);
    },
  });
}

/** Month and year are needed only where they decide: for days after the 28th, and for 29 February. */
function dayInRange(record: TermTexts): Response {
  const day = integerIn(record["day"]);
  const month = integerIn(record["month"]);
  if (day === undefined) return lacks("day is no whole number");
  if (day < 29 || day > 31) return complies(day >= 1 && day <= 28, "the month has such a day");
  if (month === undefined || month < 1 || month > 12) return lacks("month is no whole number from 1 to 12");
  if (month !== 2 || day > 29) return complies(day <= daysInMonth(2000, month), "the month has such a day");
  const year = record["year"] ?? "";
  if (!/^\d{4}$/.test(year)) return lacks("year is not of four figures");
  return complies(isLeapYear(Number(year)), "the year has a 29 February");
}
