import type { Random } from "../random.ts";
import type { Row } from "../source.ts";
import { type Correction, columnOf, type ErrorKind, hasColumn, put } from "./error-kind.ts";

const DATES = ["eventDate", "Date"] as const;
const hasDate = hasColumn(...DATES);

/** Errors in when. Only dates written to the day are spoilt. */
export const dateErrors: readonly ErrorKind[] = [
  { kind: "30-february", cards: 2, fits: hasDate, spoil: (row) => rewrite(row, ({ year }) => [year, 2, 30]) },
  {
    kind: "day-and-month-swapped",
    cards: 3,
    fits: hasDate,
    spoil: (row) => rewrite(row, ({ year, month, date }) => (date <= 12 ? [year, date, month] : undefined)),
  },
  {
    kind: "future-year",
    cards: 2,
    fits: hasDate,
    spoil: (row, random: Random) => rewrite(row, ({ month, date }) => [random.whole(2031, 2069), month, date]),
  },
  { kind: "default-date", cards: 4, fits: hasDate, spoil: (row) => rewrite(row, ({ year }) => [year, 1, 1]) },
];

interface Parts {
  year: number;
  month: number;
  date: number;
}

/** Writes another day in the form of the row's own: ISO or day first. */
function rewrite(row: Row, wrong: (right: Parts) => [number, number, number] | undefined): Correction | undefined {
  const column = columnOf(row, ...DATES);
  const text = row.cells[column] as string;
  const iso = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text);
  const dayFirst = /^(\d+)\/(\d+)\/(\d{4})$/.exec(text);
  const numbers = iso ? iso.slice(1) : dayFirst?.slice(1).reverse();
  if (!numbers) {
    return undefined;
  }
  const [year, month, date] = numbers.map(Number) as [number, number, number];
  const found = wrong({ year, month, date });
  const two = (value: number): string => String(value).padStart(2, "0");
  return (
    found &&
    put(row, column, iso ? `${found[0]}-${two(found[1])}-${two(found[2])}` : `${found[2]}/${found[1]}/${found[0]}`)
  );
}
