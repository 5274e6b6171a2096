import type { DeskAnswer, RecordAnswer, SeasonAnswer } from "../../../review/desk/answers.ts";
import { counted, drawn, element } from "./dom.ts";

const HEIGHT = 40;
/** Bars of fewer records are open: their shape says little. */
const FEW = 30;
const MONTHS = ["J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D"];
const NAMES = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];
const PARTS = ["early", "mid", "late"];

/** When its taxon is in use, caste by caste, and where in the year the record stands. */
export function seasonFigure(season: SeasonAnswer, record: RecordAnswer, { group }: DeskAnswer): HTMLElement {
  const shown = season.castes.filter(({ id }, _, all) => id !== "not_stated" || all.length === 1);
  const isKnown = shown.some(({ label }) => record.castes.includes(label));
  return element(
    "figure",
    { class: "season" },
    element("p", { class: "say" }, ...sentence(shown, record)),
    ...shown.flatMap((caste) => rowOf(caste, season.visits, record, isKnown)),
    shown.length > 0 &&
      element("div", { class: "months", "aria-hidden": "true" }, ...MONTHS.map((month) => element("span", {}, month))),
    element(
      "figcaption",
      {},
      `Bars: records in use, as a share of their year. Open bars: fewer than ${FEW} records. Grey step: visits to any ${group.one}, same scale. Line: this record.`,
    ),
  );
}

function sentence(castes: SeasonAnswer["castes"], { days, thirds, taxon }: RecordAnswer): (string | HTMLElement)[] {
  if (days === null) return ["No date was read."];
  const when = element(
    "b",
    {},
    days[0] === days[1] ? dayInWords(days[0]) : `${dayInWords(days[0])} to ${dayInWords(days[1])}`,
  );
  if (taxon === null || thirds === null || castes.length === 0) return [when, ". Nothing to hold it against."];
  const records = castes.reduce((sum, caste) => sum + caste.records, 0);
  const [first, last] = [thirdReached(castes, 0.05), thirdReached(castes, 0.95)];
  return [
    when,
    `. Nine in ten of ${counted(records, "record")} in use: ${thirdInWords(first)} to ${thirdInWords(last)}.`,
  ];
}

/** The third of a month by whose end a share of all records was made. */
function thirdReached(castes: SeasonAnswer["castes"], share: number): number {
  const year = Array.from({ length: 36 }, (_, third) =>
    castes.reduce((sum, { thirds }) => sum + (thirds[third] ?? 0), 0),
  );
  const due = share * year.reduce((sum, count) => sum + count, 0);
  let reached = 0;
  return Math.max(
    0,
    year.findIndex((count) => {
      reached += count;
      return reached >= due && count > 0;
    }),
  );
}

/** "late March" */
function thirdInWords(third: number): string {
  return `${PARTS[third % 3] ?? ""} ${NAMES[Math.floor(third / 3)] ?? ""}`;
}

/** A day of ISO 8601 in words: "4 March 2011". */
export function dayInWords(day: string): string {
  const [year = "", month = "", date = ""] = day.split("-");
  return `${Number(date)} ${NAMES[Number(month) - 1] ?? ""} ${year}`;
}

function rowOf(
  { label, records, thirds }: SeasonAnswer["castes"][number],
  visits: number[],
  record: RecordAnswer,
  isKnown: boolean,
): HTMLElement[] {
  const own = record.castes.includes(label);
  const all = visits.reduce((sum, count) => sum + count, 0) || 1;
  const shares = thirds.map((count) => count / records);
  const effort = visits.map((count) => count / all);
  const top = Math.max(...shares, ...effort);
  const high = (share: number) => (share / top) * HEIGHT;
  const marked = record.thirds;
  const step = effort.map((share, third) => `L${third} ${HEIGHT - high(share)}H${third + 1}`).join("");
  const svg = drawn(
    "svg",
    { class: "bars", viewBox: `0 0 36 ${HEIGHT}`, preserveAspectRatio: "none", "aria-hidden": "true" },
    drawn("path", { class: "effort", d: `M0 ${HEIGHT}${step}V${HEIGHT}Z` }),
    ...shares.map((share, third) =>
      share === 0
        ? null
        : drawn("rect", {
            class: records < FEW ? "bar-open" : "bar",
            x: third + 0.16,
            width: 0.68,
            y: HEIGHT - high(share),
            height: high(share),
          }),
    ),
    marked !== null &&
      (own || !isKnown) &&
      drawn("path", {
        class: "of-record",
        d: `M${marked[0]} -4H${marked[1] + 1}M${(marked[0] + marked[1] + 1) / 2} -4V${HEIGHT}`,
      }),
  );
  return [
    element(
      "h4",
      { class: own ? "own" : undefined },
      label,
      " ",
      element("span", {}, counted(records, "record"), own ? ", this record’s" : ""),
    ),
    element("div", { class: "plot" }, svg),
  ];
}
