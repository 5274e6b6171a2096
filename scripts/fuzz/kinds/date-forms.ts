import type { DateRules } from "../../../src/dates/read-date.ts";
import type { Random } from "../../demonstration/random.ts";
import { type Days, daysOf, fromTo, mondayOfWeek } from "../oracle/days.ts";

/** A date text with the days it means; undefined where it must be refused. */
export type Written = readonly [text: string, days: Days | undefined];
type Form = (random: Random, rules: DateRules) => Written;

const MONTHS = "January February March April May June July August September October November December".split(" ");
const ROMAN = "i ii iii iv v vi vii viii ix x xi xii".split(" ");
const pad = (number: number, width = 2) => String(number).padStart(width, "0");
const inWords = (random: Random, month: number): string => {
  const name = MONTHS[month - 1] ?? "";
  return random.pick([
    name,
    name.slice(0, 3),
    name.toUpperCase(),
    name.slice(0, 3).toLowerCase(),
    ROMAN[month - 1] ?? "",
  ]);
};
const yearOf = (random: Random) => random.pick([random.whole(1900, 2024), random.whole(1000, 9999), 1900, 2000, 2024]);
/** Mostly a day that exists, sometimes the 29th to 31st of any month. */
const dayOf = (random: Random) => random.pick([random.whole(1, 28), random.whole(1, 12), random.whole(29, 31)]);
const monthOf = (random: Random) => random.whole(1, 12);

const iso: Form = (random) => {
  const [y, m, d] = [
    yearOf(random),
    random.chance(0.95) ? monthOf(random) : 13,
    random.chance(0.95) ? dayOf(random) : 32,
  ];
  const time = random.pick(["", "T10:30", "T23:59:59Z", "T00:00-05:00", "T14:07+0600", " 09:15"]);
  return random.pick<Written>([
    [`${pad(y, 4)}-${pad(m)}-${pad(d)}${time}`, daysOf(y, m, d)],
    [`${pad(y, 4)}${pad(m)}${pad(d)}`, daysOf(y, m, d)],
    [`${pad(y, 4)}-${pad(m)}`, m === 13 ? { first: 0, last: 0 } : daysOf(y, m)],
    [pad(y, 4), daysOf(y)],
  ]);
};

const week: Form = (random) => {
  const [y, w, d] = [yearOf(random), random.whole(0, 54), random.whole(0, 8)];
  const monday = mondayOfWeek(y, w);
  if (random.chance(0.5))
    return [`${y}-W${pad(w)}`, monday === undefined ? undefined : { first: monday, last: monday + 6 }];
  const day = monday === undefined || d < 1 || d > 7 ? undefined : monday + d - 1;
  return [`${y}-W${pad(w)}-${d}`, day === undefined ? undefined : { first: day, last: day }];
};

const ordinal: Form = (random) => {
  const [y, n] = [yearOf(random), random.whole(0, 370)];
  const { first, last } = daysOf(y) as Days;
  return [
    `${y}-${pad(n, 3)}`,
    n < 1 || first + n - 1 > last ? undefined : { first: first + n - 1, last: first + n - 1 },
  ];
};

/** Intervals of ISO days; an exclusive end leaves out its last day, unless nothing would be left. */
const interval: Form = (random, { intervalEnd }) => {
  const [y, m, d] = [yearOf(random), monthOf(random), random.whole(1, 28)];
  const [y2, m2, d2] = random.chance(0.5)
    ? [y, m, random.whole(d, 28)]
    : [y + random.whole(0, 2), monthOf(random), dayOf(random)];
  const ends = [`${pad(y2, 4)}-${pad(m2)}-${pad(d2)}`];
  if (y === y2) ends.push(`${pad(m2)}-${pad(d2)}`);
  if (y === y2 && m === m2) ends.push(pad(d2));
  const days = y2 > 9999 ? undefined : fromTo(daysOf(y, m, d), daysOf(y2, m2, d2));
  const text = `${pad(y, 4)}-${pad(m)}-${pad(d)}/${random.pick(ends)}`;
  if (days === undefined || intervalEnd === "inclusive") return [text, days];
  return [text, { first: days.first, last: Math.max(days.first, days.last - 1) }];
};

const numbers: Form = (random, { format, twoDigitPivot }) => {
  const [a, b, y] = [random.whole(1, random.pick([12, 31])), random.whole(1, random.pick([12, 31])), yearOf(random)];
  const mark = random.pick(["/", ".", "-", " ", ". "]);
  const isPlain = a > 12 || b > 12 || a === b;
  const dayFirst = format === "day-first" || (format !== "month-first" && (a > 12 || a === b));
  const isTold = format === "day-first" || format === "month-first";
  const [d, m] = dayFirst ? [a, b] : [b, a];
  if (random.chance(0.7)) return [`${a}${mark}${b}${mark}${y}`, isTold || isPlain ? daysOf(y, m, d) : undefined];
  const short = random.whole(0, 99);
  const full = twoDigitPivot === undefined ? undefined : short <= twoDigitPivot ? 2000 + short : 1900 + short;
  return [
    `${a}${mark}${b}${mark}${pad(short)}`,
    isTold && full !== undefined && short > 0 ? daysOf(full, m, d) : undefined,
  ];
};

const words: Form = (random) => {
  const [y, m, d] = [yearOf(random), monthOf(random), dayOf(random)];
  const name = inWords(random, m);
  return random.pick<Written>([
    [`${d} ${name} ${y}`, daysOf(y, m, d)],
    [`${d}.${name}.${y}`, daysOf(y, m, d)],
    [`${d}/${name}/${y}`, daysOf(y, m, d)],
    [`${name} ${d}, ${y}`, daysOf(y, m, d)],
    [`Sunday ${d}${random.pick(["st", "nd", "rd", "th"])} of ${name} ${y}`, daysOf(y, m, d)],
    [`${y} ${name} ${d}`, daysOf(y, m, d)],
    [`${name} ${y}`, daysOf(y, m)],
    [`XX ${name} ${y}`, daysOf(y, m)],
  ]);
};

const ranges: Form = (random) => {
  const [y, m, d] = [yearOf(random), monthOf(random), random.whole(1, 31)];
  const [m2, d2, y2] = [monthOf(random), random.whole(1, 31), Math.min(9999, y + random.whole(0, 1))];
  const [name, name2] = [inWords(random, m), inWords(random, m2)];
  const dash = random.pick(["-", " - ", "–", " to ", " & ", " until "]);
  const years = Math.min(9999, y + random.whole(1, 40));
  return random.pick<Written>([
    [`${d}${dash}${d2} ${name} ${y}`, fromTo(daysOf(y, m, d), daysOf(y, m, d2))],
    [`${d} ${name}${dash}${d2} ${name2} ${y}`, fromTo(daysOf(y, m, d), daysOf(y, m2, d2))],
    [`${d} ${name} ${y}${dash}${d2} ${name2} ${y2}`, fromTo(daysOf(y, m, d), daysOf(y2, m2, d2))],
    [`${name}${dash}${name2} ${y}`, fromTo(daysOf(y, m), daysOf(y, m2))],
    [`${y}${dash}${years}`, fromTo(daysOf(y), daysOf(years))],
  ]);
};

const vague: Form = (random) => {
  const y = random.whole(1500, 2024);
  const decade = y - (y % 10);
  return random.pick<Written>([
    [`${decade}s`, decade % 100 === 0 ? undefined : fromTo(daysOf(decade), daysOf(decade + 9))],
    [`summer ${y}`, fromTo(daysOf(y, 6), daysOf(y, 8))],
    [`Autumn, ${y}`, fromTo(daysOf(y, 9), daysOf(y, 11))],
    [`winter ${y}`, undefined],
    [`winter ${y}/${pad((y + 1) % 100)}`, fromTo(daysOf(y, 12), daysOf(y + 1, 2))],
    ...["c. ", "ca ", "after ", "since ", "~", "[", "probably "].map((doubt): Written => [`${doubt}${y}`, undefined]),
    [`${y}?`, undefined],
  ]);
};

const hopeless: Form = (random) => [
  random.pick([
    ..."0000-00-00|0000|0000-W01|0000-001|00/00/0000|P1D|../2020|2020/..|NaN|Infinity|1e400|-5|12|July|12 July".split(
      "|",
    ),
    ..."1998-02-29|31/6/1998|29 Feb 1900|1998 7-8|1/2/3|12 Jul 8|yesterday|n/a|99/99/9999|1998-12-31/1998-01-01".split(
      "|",
    ),
    ..."2020-W54|2019-W53|1998-366|199807|٠١/٠٢/١٩٩٨|in litt.|٢٠٢٠|½/½/1998|July 1998-12".split("|"),
  ]),
  undefined,
];

/** Every way of writing a date, each with the days it means. */
export const FORMS: readonly Form[] = [iso, week, ordinal, interval, numbers, words, ranges, vague, hopeless];
