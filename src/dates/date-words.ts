/** A meteorological season of the northern hemisphere: spring begins in March, each has three whole months. */
export type Season = "spring" | "summer" | "autumn" | "winter";

/** Words of another language, all in lower case and without a final dot: "juni" → 6, "lente" → "spring". */
export interface DateWords {
  readonly months?: Readonly<Record<string, number>>;
  readonly seasons?: Readonly<Record<string, Season>>;
}

const MONTHS = [
  "january",
  "february",
  "march",
  "april",
  "may",
  "june",
  "july",
  "august",
  "september",
  "october",
  "november",
  "december",
] as const;
const ROMAN = ["i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii"] as const;
const SEASONS: Readonly<Record<string, Season>> = {
  spring: "spring",
  summer: "summer",
  autumn: "autumn",
  fall: "autumn",
  winter: "winter",
};
const WEEKDAYS = /^(mon|tue|tues|wed|thu|thur|thurs|fri|sat|sun|(mon|tues|wednes|thurs|fri|satur|sun)day)$/;

/** First month of each season; winter begins in December. */
export const SEASON_START: Readonly<Record<Season, number>> = { spring: 3, summer: 6, autumn: 9, winter: 12 };

/**
 * Month, 1 to 12, of a lower-case word: an English name or its abbreviation of three or more letters, a Roman
 * numeral, or a word of the vocabulary, which comes first. Undefined for any other word.
 *
 * @example monthOfWord("viii") // 8
 */
export function monthOfWord(word: string, words: DateWords = {}): number | undefined {
  const given = words.months?.[word];
  if (given !== undefined) return given;
  const roman = (ROMAN as readonly string[]).indexOf(word);
  if (roman >= 0) return roman + 1;
  if (word.length < 3) return undefined;
  const named = MONTHS.findIndex((month) => month.startsWith(word));
  return named >= 0 ? named + 1 : undefined;
}

/**
 * Season of a lower-case word, English or of the vocabulary, or undefined.
 *
 * @example seasonOfWord("fall") // "autumn"
 */
export function seasonOfWord(word: string, words: DateWords = {}): Season | undefined {
  return words.seasons?.[word] ?? SEASONS[word];
}

/**
 * True for an English weekday or its abbreviation, in lower case.
 *
 * @example isWeekdayWord("fri") // true
 */
export function isWeekdayWord(word: string): boolean {
  return WEEKDAYS.test(word);
}
