import { type DateWords, isWeekdayWord, monthOfWord } from "./date-words.ts";
import type { DateRefusal } from "./interval.ts";

/** The order in which a source writes its numbers. "iso" and "spreadsheet" declare none for day and month. */
export type DateFormat = "iso" | "day-first" | "month-first" | "spreadsheet";

/** What a source declares of its dates. `twoDigitPivot`, 0 to 99, parts the centuries: two-digit years up to it are 20xx, above it 19xx. */
export interface WrittenDateRules {
  readonly format: DateFormat;
  readonly twoDigitPivot?: number;
  readonly words?: DateWords;
}

/** One written date or one side of a range: what of it is stated. */
export interface DatePart {
  readonly year?: number;
  readonly month?: number;
  readonly day?: number;
}

/** A number, a month in words, or a place kept for something unknown ("XX", "??", "00"). */
interface Atom {
  readonly kind: "Y" | "N" | "M" | "U";
  readonly value: number;
  readonly text: string;
}

interface Atoms {
  readonly atoms: readonly Atom[];
  readonly separators: readonly string[];
}

/** What each shape of atoms states: year, month, day or nothing, in its order. */
const SHAPES: Readonly<Record<string, string>> = {
  Y: "y",
  M: "m",
  N: "d",
  MY: "my",
  YM: "ym",
  NM: "dm",
  MN: "md",
  NMY: "dmy",
  MNY: "mdy",
  YMN: "ymd",
  UMY: "-my",
  MUY: "m-y",
  YMU: "ym-",
  UUY: "--y",
  YUU: "y--",
};
const SHAPES_BESIDE_WORDS: Readonly<Record<string, string>> = { NY: "dy" };
const SHAPES_OF_NUMBERS: Readonly<Record<string, string>> = { NY: "my", YN: "ym", YNN: "ymd", UNY: "-my", YNU: "ym-" };
const PART_OF_LETTER: Readonly<Record<string, keyof DatePart>> = { y: "year", m: "month", d: "day" };

const TOKEN = /(\d+)|(\p{L}+)|(\?+)|([\s.,\-/'_]+)/gu;

/**
 * Takes one written date apart. Gives the parts that are stated, a refusal (worded without the date itself) where they
 * cannot be told apart (order of day and month, two-digit year), or undefined where the text is no date of a known shape.
 * `alone` is false for one side of a range. With a month in words a second number is a day, never a month.
 * `text` is in lower case; `hasMonthWord` tells whether the whole text has a month in words.
 *
 * @example readDatePart("18/v/1981", { format: "iso" }, true, true) // { day: 18, month: 5, year: 1981 }
 */
export function readDatePart(
  text: string,
  rules: WrittenDateRules,
  hasMonthWord: boolean,
  alone: boolean,
): DatePart | DateRefusal | undefined {
  const found = takeApart(text, rules.words);
  if (found === undefined) return undefined;
  const { atoms, separators } = found;
  const shape = atoms.map((atom) => atom.kind).join("");
  const [a, b, c] = atoms.map((atom) => atom.value) as [number, number, number];
  if (shape.startsWith("NN") && shape.endsWith("N") && shape.length === 3 && atoms[2]?.text.length === 1)
    return undefined;
  if ((shape === "NMN" || shape === "MNN") && atoms[2]?.text.length === 1) return undefined;
  if (shape === "MN" && alone && atoms[1]?.text.length === 2 && /^[/.\-']+$/.test(separators[0] ?? "")) {
    return withShortYear({ month: a }, b, rules);
  }
  if (shape === "NNY" || shape === "NNN") {
    if (hasMonthWord || separators[0] !== separators[1]) return undefined;
    const order = inOrder(a, b, rules.format);
    if ("refused" in order) return order;
    return shape === "NNY" ? { ...order, year: c } : shortYearInOrder(order, c, rules);
  }
  if (isRangeInside(shape, separators)) return undefined;
  if (shape === "NN") return hasMonthWord ? undefined : inOrder(a, b, rules.format);
  if (shape === "NMN") return withShortYear({ day: a, month: b }, c, rules);
  if (shape === "MNN") return withShortYear({ day: b, month: a }, c, rules);
  return partOfShape(shape, [a, b, c], hasMonthWord);
}

/** "1998 7-8" and "June-8 1998" are months or days from one to another: a dash on one side alone is no date's mark. */
function isRangeInside(shape: string, [first = "", second = ""]: readonly string[]): boolean {
  if (shape === "YNN") return first !== second;
  return (shape === "MNY" || shape === "YMN") && first !== second && /[-/]/.test(first + second);
}

/**
 * True when a lower-case text has a month in words or as a Roman numeral.
 *
 * @example hasMonthInWords("9.ii-10.iii.2000") // true
 */
export function hasMonthInWords(text: string, words?: DateWords): boolean {
  return (text.match(/\p{L}+/gu) ?? []).some((word) => monthOfWord(word, words) !== undefined);
}

function partOfShape(shape: string, values: readonly number[], hasMonthWord: boolean): DatePart | undefined {
  const letters = SHAPES[shape] ?? (hasMonthWord ? SHAPES_BESIDE_WORDS : SHAPES_OF_NUMBERS)[shape];
  if (letters === undefined) return undefined;
  const stated = [...letters].map((letter, index) => [PART_OF_LETTER[letter], values[index]]);
  return Object.fromEntries(stated.filter(([part]) => part !== undefined));
}

function inOrder(a: number, b: number, format: DateFormat): DatePart | DateRefusal {
  if (format === "day-first") return { day: a, month: b };
  if (format === "month-first") return { day: b, month: a };
  if (a > 12 || a === b) return { day: a, month: b };
  if (b > 12) return { day: b, month: a };
  return {
    refused: "does not say which number is the day and which the month",
    wayOut: "set date_format of the source to day-first or month-first",
  };
}

function shortYearInOrder(order: DatePart, year: number, rules: WrittenDateRules): DatePart | DateRefusal {
  if (rules.format === "day-first" || rules.format === "month-first") return withShortYear(order, year, rules);
  return {
    refused: "has a two-digit year and does not say which number is the year",
    wayOut: "set date_format and two_digit_pivot of the source",
  };
}

function withShortYear(part: DatePart, digits: number, { twoDigitPivot }: WrittenDateRules): DatePart | DateRefusal {
  const year = fullYear(digits, twoDigitPivot);
  return typeof year === "number" ? { ...part, year } : year;
}

/**
 * The year that two digits mean: 20xx up to the pivot, 19xx above it; refused without a pivot.
 *
 * @example fullYear(98, 24) // 1998
 */
export function fullYear(digits: number, twoDigitPivot: number | undefined): number | DateRefusal {
  if (twoDigitPivot !== undefined) return digits <= twoDigitPivot ? 2000 + digits : 1900 + digits;
  return {
    refused: `has a two-digit year "${String(digits).padStart(2, "0")}" that does not say its century`,
    wayOut: "write the year in full, or declare two_digit_pivot of the source",
  };
}

function takeApart(text: string, words: DateWords | undefined): Atoms | undefined {
  const atoms: Atom[] = [];
  const separators: string[] = [];
  let read = 0;
  let separator = "";
  for (const match of text.matchAll(TOKEN)) {
    if (match.index !== read) return undefined;
    read += match[0].length;
    const [token, number, word, , gap] = match;
    if (gap !== undefined) {
      separator += gap;
      continue;
    }
    if (word !== undefined && isSilent(word, separator, atoms.at(-1))) continue;
    const atom = number === undefined ? wordAtom(token, words) : numberAtom(token);
    if (atom === undefined) return undefined;
    if (atoms.length === 0 && separator.trim() !== "") return undefined;
    if (atoms.length > 0) separators.push(separator.replaceAll(/\s/g, "") || separator);
    atoms.push(atom);
    separator = "";
  }
  // A dot may end a date; a dash or slash at an end leaves one side of an interval open.
  return read === text.length && atoms.length > 0 && /^[.,\s]*$/.test(separator) ? { atoms, separators } : undefined;
}

/** Weekdays, "of" and the ending of an ordinal say nothing further. */
function isSilent(word: string, separator: string, before: Atom | undefined): boolean {
  if (isWeekdayWord(word) || word === "of" || word === "the") return true;
  return /^(st|nd|rd|th)$/.test(word) && separator === "" && before?.kind === "N";
}

function numberAtom(text: string): Atom | undefined {
  if (/^[1-9]\d{3}$/.test(text)) return { kind: "Y", value: Number(text), text };
  if (text === "00") return { kind: "U", value: 0, text };
  return text.length <= 2 ? { kind: "N", value: Number(text), text } : undefined;
}

function wordAtom(text: string, words: DateWords | undefined): Atom | undefined {
  if (/^(x{2,}|\?+)$/.test(text)) return { kind: "U", value: 0, text };
  const month = monthOfWord(text, words);
  return month === undefined ? undefined : { kind: "M", value: month, text };
}
