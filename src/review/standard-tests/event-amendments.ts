import { readDateColumns } from "../../dates/date-columns.ts";
import { formatInterval, isDateRefusal } from "../../dates/interval.ts";
import type { DateFields } from "../../dates/read-date.ts";
import { eventParts, isoInterval } from "./iso-text.ts";
import { lacks, proposes, type Response, unchanged } from "./response.ts";
import {
  integerIn,
  isEmpty,
  type Parameters,
  type StandardTest,
  standardTest,
  type TermTexts,
} from "./standard-test.ts";
import { writtenDate } from "./written-amendments.ts";

const PARTS_OF_EVENT = ["year", "month", "day", "startDayOfYear", "endDayOfYear"] as const;

/** The amendments that fill in eventDate from other terms, and other terms from eventDate. */
export const EVENT_AMENDMENTS: readonly StandardTest[] = [
  fillsEventDate(
    "6d0a0c10-5e4a-4759-b448-88932f399812",
    "AMENDMENT_EVENTDATE_FROM_VERBATIM",
    ["verbatimEventDate"],
    (record, { dates }) => {
      const verbatim = record["verbatimEventDate"];
      return isEmpty(verbatim) ? "lacking" : writtenDate(verbatim ?? "", dates);
    },
  ),
  fillsEventDate(
    "3892f432-ddd0-4a0a-b713-f2e2ecbd879d",
    "AMENDMENT_EVENTDATE_FROM_YEARMONTHDAY",
    ["year", "month", "day"],
    (record, parameters) =>
      integerIn(record["year"]) === undefined ? "lacking" : fromColumns(record, ["year", "month", "day"], parameters),
  ),
  fillsEventDate(
    "eb0a44fa-241c-4d64-98df-ad4aa837307b",
    "AMENDMENT_EVENTDATE_FROM_YEARSTARTDAYOFYEARENDDAYOFYEAR",
    ["year", "startDayOfYear", "endDayOfYear"],
    (record, parameters) => {
      const terms = ["year", "startDayOfYear", "endDayOfYear"] as const;
      if (terms.some((term) => isEmpty(record[term]))) return "lacking";
      // The rule fills in an interval only: two equal days are left for a person.
      const isInterval = Number(record["startDayOfYear"]) < Number(record["endDayOfYear"]);
      return isInterval ? fromColumns(record, terms, parameters) : undefined;
    },
  ),
  standardTest({
    guid: "710fe118-17e1-440f-b428-88ba3f547d6d",
    label: "AMENDMENT_EVENT_FROM_EVENTDATE",
    kind: "amendment",
    actsOn: PARTS_OF_EVENT,
    consults: ["eventDate"],
    onlyWhetherFilled: PARTS_OF_EVENT,
    run: (record) => {
      const eventDate = record["eventDate"] ?? "";
      if (isoInterval(eventDate) === undefined) return lacks("eventDate is no ISO 8601 date");
      const changes = Object.fromEntries(
        Object.entries(eventParts(eventDate)).filter(([term]) => isEmpty(record[term])),
      );
      return Object.keys(changes).length === 0
        ? unchanged("eventDate says nothing that is not filled in")
        : proposes("FILLED_IN", changes, "as eventDate says");
    },
  }),
];

/** `from` gives the date, "lacking" where the terms it reads are not filled, or undefined where they do not make a date. */
function fillsEventDate(
  guid: string,
  label: string,
  consults: readonly string[],
  from: (record: TermTexts, parameters: Parameters) => string | undefined,
): StandardTest {
  const run = (record: TermTexts, parameters: Parameters): Response => {
    if (!isEmpty(record["eventDate"])) return lacks("eventDate is filled");
    const eventDate = from(record, parameters);
    if (eventDate === "lacking") return lacks(`${consults.join(", ")} do not say enough`);
    return eventDate === undefined
      ? unchanged(`${consults.join(", ")} make no plain date`)
      : proposes("FILLED_IN", { eventDate }, `read from ${consults.join(", ")}`);
  };
  return standardTest({
    guid,
    label,
    kind: "amendment",
    actsOn: ["eventDate"],
    consults,
    onlyWhetherFilled: ["eventDate"],
    run,
  });
}

function fromColumns(
  record: TermTexts,
  terms: readonly (keyof DateFields)[],
  { dates }: Parameters,
): string | undefined {
  const read = readDateColumns(Object.fromEntries(terms.map((term) => [term, record[term]])), dates);
  return read === undefined || isDateRefusal(read) ? undefined : formatInterval(read.interval);
}
