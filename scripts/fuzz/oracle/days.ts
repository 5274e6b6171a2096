/** Days as the language's own calendar counts them, years 1000 to 9999. */
export interface Days {
  first: number;
  last: number;
}

/** Whole days since 1970-01-01; undefined where the three numbers are no day. */
export function dayByClock(year: number, month: number, day: number): number | undefined {
  const date = new Date(Date.UTC(year, month - 1, day));
  const isSame = date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return isSame ? date.getTime() / 86_400_000 : undefined;
}

/** A day, a month or a year as days; undefined where there is none such. */
export function daysOf(year: number, month?: number, day?: number): Days | undefined {
  if (day !== undefined) {
    const one = dayByClock(year, month ?? 0, day);
    return one === undefined ? undefined : { first: one, last: one };
  }
  if (month === undefined)
    return { first: Date.UTC(year, 0, 1) / 86_400_000, last: Date.UTC(year + 1, 0, 0) / 86_400_000 };
  if (month < 1 || month > 12) return undefined;
  return { first: Date.UTC(year, month - 1, 1) / 86_400_000, last: Date.UTC(year, month, 0) / 86_400_000 };
}

/** From the first day of one to the last of another; undefined where either is none or they are the wrong way round. */
export function fromTo(from: Days | undefined, to: Days | undefined): Days | undefined {
  return from === undefined || to === undefined || from.first > to.first
    ? undefined
    : { first: from.first, last: to.last };
}

/** Monday of an ISO week, counted on from the Monday of the week that holds 4 January; undefined past the year's last week. */
export function mondayOfWeek(year: number, week: number): number | undefined {
  const fourth = new Date(Date.UTC(year, 0, 4));
  const monday = fourth.getTime() / 86_400_000 - ((fourth.getUTCDay() + 6) % 7) + 7 * (week - 1);
  const thursday = new Date((monday + 3) * 86_400_000);
  return week >= 1 && thursday.getUTCFullYear() === year ? monday : undefined;
}
