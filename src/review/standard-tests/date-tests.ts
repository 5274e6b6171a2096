import { dayNumber, isLeapYear, yearMonthDay } from "../../dates/calendar.ts";
import { EARLIEST_LIKELY_DAY } from "../../dates/interval.ts";
import { durationInSeconds, eventParts, isoInterval } from "./iso-text.ts";
import { complies, hasResult, lacks } from "./response.ts";
import { integerIn, isEmpty, type StandardTest, standardTest } from "./standard-test.ts";

/** The draft's default: the year from which botanical names count. */
const EARLIEST_IDENTIFICATION = dayNumber(1753, 1, 1);
const PARTS_OF_EVENT = ["day", "month", "year", "startDayOfYear", "endDayOfYear"] as const;

/** The tests of eventDate and dateIdentified; their amendments are beside them. */
export const DATE_TESTS: readonly StandardTest[] = [
  isStandard("4f2bf8fd-fc5c-493f-a44c-e7b16153c803", "VALIDATION_EVENTDATE_STANDARD", "eventDate"),
  isStandard("66269bdd-9271-4e76-b25c-7ab81eebe1d8", "VALIDATION_DATEIDENTIFIED_STANDARD", "dateIdentified"),
  standardTest({
    guid: "3cff4dc4-72e9-4abe-9bf3-8a30f1618432",
    label: "VALIDATION_EVENTDATE_INRANGE",
    actsOn: ["eventDate"],
    run: (record, { today }) => {
      const interval = isoInterval(record["eventDate"]);
      if (interval === undefined) return lacks("eventDate is no ISO 8601 date");
      const isInRange = interval.first >= EARLIEST_LIKELY_DAY && interval.last <= dayNumber(yearOfDay(today), 12, 31);
      return complies(isInRange, "eventDate is from 1582-11-15 to the end of the present year");
    },
  }),
  standardTest({
    guid: "dc8aae4b-134f-4d75-8a71-c4186239178e",
    label: "VALIDATION_DATEIDENTIFIED_INRANGE",
    actsOn: ["dateIdentified"],
    consults: ["eventDate"],
    run: (record, { today }) => {
      const [identified, event] = [isoInterval(record["dateIdentified"]), isoInterval(record["eventDate"])];
      if (identified === undefined) return lacks("dateIdentified is no ISO 8601 date");
      if (event === undefined && !isEmpty(record["eventDate"])) return lacks("eventDate is no ISO 8601 date");
      const now = isoInterval(today)?.last ?? Number.POSITIVE_INFINITY;
      const isInRange = identified.first >= EARLIEST_IDENTIFICATION && identified.first <= now;
      const isAfter = event === undefined || identified.last >= event.first;
      return complies(isInRange && isAfter, "dateIdentified is from 1753 to today, and not before eventDate");
    },
  }),
  standardTest({
    guid: "5618f083-d55a-4ac2-92b5-b9fb227b832f",
    label: "VALIDATION_EVENT_CONSISTENT",
    actsOn: ["eventDate", ...PARTS_OF_EVENT],
    run: (record) => {
      const filled = PARTS_OF_EVENT.filter((term) => !isEmpty(record[term]));
      if (isEmpty(record["eventDate"]) || filled.length === 0) return lacks("there is nothing to compare");
      const parts = eventParts(record["eventDate"] ?? "");
      const agree = filled.every((term) => integerIn(record[term]) === Number(parts[term]));
      return complies(agree, `eventDate says the same as ${filled.join(", ")}`);
    },
  }),
  standardTest({
    guid: "56b6c695-adf1-418e-95d2-da04cad7be53",
    label: "MEASURE_EVENTDATE_DURATIONINSECONDS",
    kind: "measure",
    actsOn: ["eventDate"],
    run: (record) => {
      const seconds = durationInSeconds(record["eventDate"]);
      return seconds === undefined
        ? { ...lacks("eventDate is no ISO 8601 date"), result: "NOT_REPORTED" }
        : hasResult(String(seconds), "seconds between the ends of eventDate");
    },
  }),
  dayOfYearInRange(
    "85803c7e-2a5a-42e1-b8d3-299a44cafc46",
    "VALIDATION_STARTDAYOFYEAR_INRANGE",
    "startDayOfYear",
    "first",
  ),
  dayOfYearInRange("9a39d88c-7eee-46df-b32a-c109f9f81fb8", "VALIDATION_ENDDAYOFYEAR_INRANGE", "endDayOfYear", "last"),
];

function isStandard(guid: string, label: string, term: string): StandardTest {
  return standardTest({
    guid,
    label,
    actsOn: [term],
    run: (record) =>
      isEmpty(record[term])
        ? lacks(`${term} is empty`)
        : complies(isoInterval(record[term]) !== undefined, `${term} is an ISO 8601 date`),
  });
}

function dayOfYearInRange(guid: string, label: string, term: string, end: "first" | "last"): StandardTest {
  return standardTest({
    guid,
    label,
    actsOn: [term],
    consults: ["eventDate"],
    run: (record) => {
      if (isEmpty(record[term])) return lacks(`${term} is empty`);
      const day = integerIn(record[term]) ?? 0;
      if (day !== 366) return complies(day >= 1 && day <= 365, `${term} is 1 to 365`);
      const interval = isoInterval(record["eventDate"]);
      if (interval === undefined) return lacks("eventDate does not give the year that would have a day 366");
      return complies(isLeapYear(yearMonthDay(interval[end]).year), "the year of eventDate has a day 366");
    },
  });
}

function yearOfDay(today: string): number {
  return Number(today.slice(0, 4));
}
