import type { CheckContext } from "../check.ts";
import { poissonTail } from "../poisson-tail.ts";

/** A day of the year that has far more lists of a source than the days around it. */
export interface HeapedDay {
  source: string;
  /** As "01-31". */
  day: string;
  /** Lists, and the records on them: one recorder's records of one day are a list, for they have one cause. */
  lists: number;
  records: number;
  /** Mean of the lists on the days around it. */
  expected: number;
}

/** Days of the year in a leap year, as "01-31", in order. */
const DAYS: readonly string[] = Array.from({ length: 366 }, (_, index) =>
  new Date(Date.UTC(2000, 0, 1 + index)).toISOString().slice(5, 10),
);

/** Days programs and forms write where only the year is known. */
export const FILLED_IN: readonly string[] = ["01-01", "12-31"];
/** Beside these days so few records are usual that two are looked at, and one chance in a thousand is enough. */
const FEWEST_FILLED_IN = { lists: 2, years: 2, chance: 0.001 };

/**
 * Finds days of the year on which a source has far more lists than around them, year after year: a good day in one year
 * is none. Records are counted that name one day; days of a source's survey or campaign are looked at only where programs
 * fill them in.
 *
 * @returns in order of source and day
 */
export async function heapedDays({ database, scheme }: CheckContext): Promise<HeapedDay[]> {
  const counted = await database.rows<{ source: string; day: string; records: number; lists: number; years: number }>(
    `SELECT source, strftime(DATE '1970-01-01' + first_day, '%m-%d') AS day, count(*) AS records,
       count(DISTINCT first_day || ' ' || recorder) AS lists, count(DISTINCT first_day) AS years
     FROM placed_records WHERE first_day = last_day GROUP BY source, day`,
  );
  const { sources, checks } = scheme.settings;
  const { times, days: around, ...fewest } = checks.default_dates;
  return sources.flatMap(({ id, project }) => {
    const own = new Map(counted.filter(({ source }) => source === id).map((row) => [row.day, row]));
    const counts = DAYS.map((day) => own.get(day)?.lists ?? 0);
    return DAYS.flatMap((day, index) => {
      const isFilledIn = FILLED_IN.includes(day);
      const { lists = 0, years = 0, records = 0 } = own.get(day) ?? {};
      const least = isFilledIn ? FEWEST_FILLED_IN : fewest;
      if (lists < least.lists || years < least.years || (project !== "" && !isFilledIn)) return [];
      const expected = meanAround(counts, index, around);
      const isHeaped = lists >= times * expected && poissonTail(lists, Math.max(expected, 1 / around)) < least.chance;
      return isHeaped ? [{ source: id, day, lists, records, expected }] : [];
    });
  });
}

/** 29 February is there one year in four and stands for nothing beside the others. */
function meanAround(counts: readonly number[], index: number, around: number): number {
  const leapDay = DAYS.indexOf("02-29");
  const neighbours = Array.from({ length: 2 * around + 1 }, (_, step) => (index + step - around + 366) % 366).filter(
    (other) => other !== index && other !== leapDay,
  );
  return neighbours.reduce((sum, other) => sum + (counts[other] ?? 0), 0) / neighbours.length;
}

/** Lays the table `heaped_days` (source, day, lists, records, expected) for the question each record of such a day is asked. */
export async function layHeapedDays({ database }: CheckContext, days: readonly HeapedDay[]): Promise<void> {
  const filler = await database.fill("heaped_days", {
    source: "text",
    day: "text",
    lists: "integer",
    records: "integer",
    expected: "double",
  });
  filler.add({
    source: days.map(({ source }) => source),
    day: days.map(({ day }) => day),
    lists: days.map(({ lists }) => lists),
    records: days.map(({ records }) => records),
    expected: days.map(({ expected }) => Math.round(expected * 10) / 10),
  });
  filler.done();
}
