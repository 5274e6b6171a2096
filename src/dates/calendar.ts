/**
 * The proleptic Gregorian calendar on whole days. A day is an integer: days since 1970-01-01 (negative before it).
 * JavaScript's Date is not used: it belongs to a time zone and reads two-digit years as the twentieth century.
 */

/** A day of the calendar: `month` 1 to 12, `day` 1 to 31, `year` any integer (0 is 1 BC). */
export interface CalendarDate {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

const DAYS_IN_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const DAYS_IN_400_YEARS = 146_097;

/** Days from 0000-03-01, where the arithmetic below counts from so that the leap day ends its year, to 1970-01-01. */
const MARCH_ZERO_TO_1970 = 719_468;

/**
 * True for a leap year of the Gregorian calendar, also before 1582.
 *
 * @example isLeapYear(1900) // false
 */
export function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/**
 * Number of days in a month; 0 for a month outside 1 to 12, so that no day of it is valid.
 *
 * @example daysInMonth(2024, 2) // 29
 */
export function daysInMonth(year: number, month: number): number {
  if (month === 2 && isLeapYear(year)) return 29;
  return DAYS_IN_MONTH[month - 1] ?? 0;
}

/**
 * True when the three whole numbers name a day that exists.
 *
 * @example isCalendarDate(2023, 2, 29) // false
 */
export function isCalendarDate(year: number, month: number, day: number): boolean {
  return Number.isInteger(day) && day >= 1 && day <= daysInMonth(year, month);
}

/**
 * Days since 1970-01-01 of an existing date. Throws a RangeError where there is no such day.
 * Counted in eras of 400 years of 146,097 days (the Gregorian cycle).
 *
 * @example dayNumber(2000, 3, 1) // 11017
 */
export function dayNumber(year: number, month: number, day: number): number {
  if (!isCalendarDate(year, month, day)) throw new RangeError(`there is no day ${year}-${month}-${day}`);
  const shiftedYear = month <= 2 ? year - 1 : year;
  const era = Math.floor(shiftedYear / 400);
  const yearOfEra = shiftedYear - era * 400;
  const dayOfShiftedYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfShiftedYear;
  return era * DAYS_IN_400_YEARS + dayOfEra - MARCH_ZERO_TO_1970;
}

/**
 * Year, month and day of a day number: the reverse of `dayNumber`.
 *
 * @example yearMonthDay(-1) // { year: 1969, month: 12, day: 31 }
 */
export function yearMonthDay(day: number): CalendarDate {
  const shifted = day + MARCH_ZERO_TO_1970;
  const era = Math.floor(shifted / DAYS_IN_400_YEARS);
  const dayOfEra = shifted - era * DAYS_IN_400_YEARS;
  const leapDays = Math.floor(dayOfEra / 1_460) - Math.floor(dayOfEra / 36_524) + Math.floor(dayOfEra / 146_096);
  const yearOfEra = Math.floor((dayOfEra - leapDays) / 365);
  const dayOfShiftedYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shiftedMonth = Math.floor((5 * dayOfShiftedYear + 2) / 153);
  const month = shiftedMonth < 10 ? shiftedMonth + 3 : shiftedMonth - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfShiftedYear - Math.floor((153 * shiftedMonth + 2) / 5) + 1,
  };
}

/**
 * Day of the year, 1 to 365 or 366.
 *
 * @example dayOfYear(dayNumber(2024, 3, 1)) // 61
 */
export function dayOfYear(day: number): number {
  return day - dayNumber(yearMonthDay(day).year, 1, 1) + 1;
}

/**
 * The third of a month a day lies in, 0 to 35: days 1–10, 11–20 and 21 to the end of January are 0, 1 and 2.
 * The last third has 8 to 11 days.
 *
 * @example thirdOfYear(dayNumber(2024, 2, 29)) // 5
 */
export function thirdOfYear(day: number): number {
  const date = yearMonthDay(day);
  return (date.month - 1) * 3 + Math.min(2, Math.floor((date.day - 1) / 10));
}

/**
 * Number of days in a third of a month (0 to 35) of a year: 8 to 11.
 *
 * @example daysInThird(2023, 5) // 8
 */
export function daysInThird(year: number, third: number): number {
  return third % 3 < 2 ? 10 : daysInMonth(year, Math.floor(third / 3) + 1) - 20;
}

/**
 * ISO 8601 text of a day. Years outside 0 to 9999 are written with a sign and six digits.
 *
 * @example formatDay(0) // "1970-01-01"
 */
export function formatDay(day: number): string {
  const date = yearMonthDay(day);
  return `${formatYear(date.year)}-${pad(date.month)}-${pad(date.day)}`;
}

/**
 * ISO 8601 text of a year: four digits, or a sign and six digits outside 0 to 9999.
 *
 * @example formatYear(987) // "0987"
 */
export function formatYear(year: number): string {
  if (year >= 0 && year <= 9999) return String(year).padStart(4, "0");
  return `${year < 0 ? "-" : "+"}${String(Math.abs(year)).padStart(6, "0")}`;
}

function pad(number: number): string {
  return String(number).padStart(2, "0");
}
