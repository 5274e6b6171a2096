import { type Corner, figuresBySlicing, HUNDREDS } from "./lettering.ts";

const IGNORED = /[\s\u00AD\u200B-\u200F\u202A-\u202E\u2060\u2066-\u2069]/u;
const MARKS = ".,/";

/**
 * A reference character by character: its letters and figures, how many figures stand together, and whether nothing
 * else stands there.
 */
function takeCharacters(reference: string): { text: string; groups: number[]; isPlain: boolean } {
  const found = { text: "", groups: [] as number[], isPlain: true };
  let isParted = true;
  for (const letter of reference) {
    const code = letter.codePointAt(0) as number;
    const narrow = code >= 0xff01 && code <= 0xff5e ? String.fromCodePoint(code - 0xfee0) : letter;
    const isFigure = narrow >= "0" && narrow <= "9";
    if (isFigure && isParted) found.groups.push(0);
    if (isFigure) found.groups.push((found.groups.pop() as number) + 1);
    isParted = !isFigure;
    if (isFigure || (narrow >= "A" && narrow <= "Z")) found.text += narrow;
    else if (narrow >= "a" && narrow <= "z") found.text += String.fromCharCode(narrow.charCodeAt(0) - 32);
    else if (!IGNORED.test(letter) && !MARKS.includes(narrow)) found.isPlain = false;
  }
  return found;
}

/**
 * The square a lettered reference names, by looking its letters up and slicing its figures; undefined where no careful
 * reader would give one: other alphabets, uneven figures, figures whose half falls inside a group written together.
 */
export function readByTable(grid: string, reference: string): Corner | undefined {
  const { text, groups, isPlain } = takeCharacters(reference);
  if (!isPlain) return undefined;
  const letters = text.slice(0, grid === "irish" ? 1 : 2);
  const table = HUNDREDS[grid] ?? {};
  const corner = Object.hasOwn(table, letters) ? table[letters] : undefined;
  const inside = figuresBySlicing(text.slice(letters.length));
  if (corner === undefined || inside === undefined) return undefined;
  const all = groups.reduce((sum, size) => sum + size, 0);
  const sums = groups.map((_, i) => groups.slice(0, i + 1).reduce((sum, size) => sum + size, 0));
  const isHalved = groups.length < 2 || sums.some((sum) => sum * 2 === all);
  return isHalved ? { east: corner[0] + inside.east, north: corner[1] + inside.north, size: inside.size } : undefined;
}
