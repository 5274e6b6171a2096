import type { Random } from "../demonstration/random.ts";

const BLANKS = [" ", "  ", "\u00A0", "\u2009", "\t", "\u200B", "\uFEFF", "\u202F", "\u3000", "\u00AD", "\u200F"];
const INSERTS = [
  "-",
  "−",
  "–",
  "—",
  "+",
  ".",
  ",",
  ";",
  ":",
  "/",
  "\\",
  "'",
  '"',
  "°",
  "′",
  "″",
  "?",
  "!",
  "(",
  ")",
  "[",
  "]",
  "&",
  "\0",
  "\u0301",
  "\u200F",
  "\u202E",
  "０",
  "５",
  "Ａ",
  "٣",
  "৪",
  "²",
  "½",
  "Ⅻ",
  "①",
  "ß",
  "ſ",
  "ﬁ",
  "ı",
  "İ",
  "O",
  "o",
  "I",
  "l",
  "0",
  "1",
  "5",
  "E",
  "e",
  "x",
  "N",
  "W",
  "NaN",
  "Infinity",
  "1e400",
  "T",
  "Z",
  "😀",
  "\n",
  "\r\n",
  "ٱ",
  "K",
];

/** Spaces of every kind between characters, here and there. */
export function spaced(random: Random, text: string): string {
  return [...text].map((letter) => (random.chance(0.25) ? random.pick(BLANKS) + letter : letter)).join("");
}

/** A text with its case changed at random, by letter or as a whole. */
export function cased(random: Random, text: string): string {
  if (random.chance(0.5)) return random.chance(0.5) ? text.toLowerCase() : text.toUpperCase();
  return [...text].map((letter) => (random.chance(0.5) ? letter.toLowerCase() : letter.toUpperCase())).join("");
}

/** Printable ASCII as full-width characters. */
export function wide(text: string): string {
  return text.replace(/[!-~]/g, (letter) => String.fromCharCode(letter.charCodeAt(0) + 0xfee0));
}

/** Letters O and I for 0 and 1, or the other way round, in one place. */
export function confused(random: Random, text: string): string {
  const swap: Record<string, string> = { "0": "O", "1": "I", O: "0", I: "1", o: "0", l: "1" };
  const places = [...text].flatMap((letter, at) => (letter in swap ? [at] : []));
  if (places.length === 0) return text;
  const at = random.pick(places);
  return text.slice(0, at) + (swap[text.charAt(at)] ?? "") + text.slice(at + 1);
}

/** One to four characters of a text deleted, doubled, exchanged or replaced by something nasty; now and then very long. */
export function spoilt(random: Random, text: string): string {
  let result = text;
  for (let times = random.whole(1, 4); times > 0; times -= 1) {
    const at = random.whole(0, result.length);
    const what = random.whole(0, 5);
    if (what === 0) result = result.slice(0, at) + result.slice(at + 1);
    else if (what === 1) result = result.slice(0, at) + result.charAt(at) + result.slice(at);
    else if (what === 2)
      result = result.slice(0, at) + result.charAt(at + 1) + result.charAt(at) + result.slice(at + 2);
    else result = result.slice(0, at) + random.pick(INSERTS) + result.slice(what === 3 ? at + 1 : at);
  }
  if (!random.chance(0.0005)) return result;
  return long(random, result);
}

/** A text with one part repeated up to a megabyte. */
export function long(random: Random, text: string): string {
  const from = random.whole(0, Math.max(0, text.length - 1));
  const part = text.slice(from, from + random.whole(1, 6)) || random.pick(INSERTS);
  const times = Math.ceil(random.pick([1_000, 20_000, 1_000_000]) / part.length);
  return text.slice(0, from) + part.repeat(times) + text.slice(from);
}
