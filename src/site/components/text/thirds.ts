import type { Key } from "../../words/catalogue.ts";
import { language, languageOf, say } from "../../words/say.ts";
import { monthNames, thirdValues } from "./month-names.ts";

const said = new Map<string, string>();

/** A page says the same 36 thirds over and over. */
function sayThird(key: Key, third: number): string {
  const known = said.get(`${language()} ${key} ${third}`);
  if (known !== undefined) return known;
  const words = say(key, thirdValues(third, languageOf(key)));
  said.set(`${language()} ${key} ${third}`, words);
  return words;
}

/**
 * The days of a third of a month.
 *
 * @param third 0 for 1–10 January to 35 for 21–31 December
 * @throws RangeError outside 0 to 35
 * @example thirdDays(7) // "11–20 March"
 */
export function thirdDays(third: number): string {
  return sayThird("text.third", third);
}

/**
 * A third of a month as people say it.
 *
 * @param third 0 to 35
 * @throws RangeError outside 0 to 35
 * @example thirdLoosely(7) // "mid March"
 */
export function thirdLoosely(third: number): string {
  return sayThird("text.third-loosely", third);
}

/** The name of a month. @param month 0 to 11 @example monthName(4) // "May" */
export function monthName(month: number): string {
  return monthNames(language()).alone[month] ?? "";
}

/** The first letter of each month, over a chart of the year. @example monthLetters().join("") // "JFMAMJJASOND" */
export function monthLetters(): string[] {
  return monthNames(language()).alone.map((name) => name.charAt(0).toLocaleUpperCase(language()));
}

/**
 * A date in words; a text that is no date of the form year-month-day stays as it is.
 *
 * @example longDate("2025-03-01") // "1 March 2025"
 */
export function longDate(text: string): string {
  const [, year = "", month, day] = text.match(/^(\d{4})-(\d{2})-(\d{2})$/) ?? [];
  const name = month === undefined ? undefined : monthNames(languageOf("text.date")).inDate[Number(month) - 1];
  return name === undefined ? text : say("text.date", { day: String(Number(day)), month: name, year });
}
