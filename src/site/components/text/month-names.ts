/** Names of months in a language, alone and in a date, where some languages bend them. */
export interface MonthNames {
  readonly alone: readonly string[];
  readonly inDate: readonly string[];
}

const made = new Map<string, MonthNames>();

/**
 * The names of the twelve months.
 *
 * @param tag BCP 47 tag
 * @example monthNames("fr").inDate[2] // "mars"
 */
export function monthNames(tag: string): MonthNames {
  const known = made.get(tag);
  if (known !== undefined) return known;
  const days = Array.from({ length: 12 }, (_, month) => new Date(Date.UTC(2024, month, 15)));
  const alone = new Intl.DateTimeFormat(tag, { month: "long", timeZone: "UTC" });
  const inDate = new Intl.DateTimeFormat(tag, { month: "long", day: "numeric", timeZone: "UTC" });
  const names = {
    alone: days.map((day) => alone.format(day)),
    inDate: days.map((day) => inDate.formatToParts(day).find(({ type }) => type === "month")?.value ?? ""),
  };
  made.set(tag, names);
  return names;
}

/** Last day of each month; the last third of February takes the leap day in. */
const LAST_DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/**
 * What the messages `text.third` and `text.third-loosely` ask for. Runs in the browser too.
 *
 * @param third 0 for 1–10 January to 35 for 21–31 December
 * @param tag language of the message
 * @throws RangeError outside 0 to 35
 * @example thirdValues(7, "fr") // { part: "middle", month: "mars", last: "31" }
 */
export function thirdValues(third: number, tag: string): { part: string; month: string; last: string } {
  if (!Number.isInteger(third) || third < 0 || third > 35)
    throw new RangeError(`third of a month ${third}: from 0 to 35`);
  const month = Math.floor(third / 3);
  return {
    part: ["first", "middle", "last"][third % 3] ?? "",
    month: monthNames(tag).inDate[month] ?? "",
    last: String(LAST_DAYS[month] ?? 31),
  };
}
