import { readCaste } from "../../../src/names/caste.ts";
import type { Random } from "../../demonstration/random.ts";
import { cased, spoilt } from "../spoil.ts";
import type { Kind, Outcome } from "../trial.ts";
import { CASTES } from "./taxa.ts";

type Counts = Readonly<Record<string, number | undefined>>;

interface CasteCase {
  text: string;
  /** The counts meant; undefined for a spoilt text. */
  expected: Counts | undefined;
}

/** Texts on castes: numbers before and behind, words, letters and signs, several of one class, zero, ranges, nonsense. */
export const castes: Kind<CasteCase> = { name: "castes", share: 0.06, draw, judge };

function draw(random: Random): CasteCase {
  const items = Array.from({ length: random.whole(1, 4) }, () => ({
    caste: random.pick(CASTES.classes),
    count: random.chance(0.8) ? random.pick([random.whole(1, 9), random.whole(0, 300), 0]) : undefined,
  }));
  const behind = random.chance(0.2);
  const mark = random.pick([", ", "; ", " & ", " and ", " + ", ","]);
  const text = items
    .map(({ caste, count }) => {
      const word = random.pick(caste.words);
      if (count === undefined) return word;
      return behind ? `${word} ${count}` : `${count}${random.pick(["", " ", " x ", "\u00A0"])}${word}`;
    })
    .join(mark);
  if (random.chance(0.4)) return { text: spoilt(random, text), expected: undefined };
  const expected: Record<string, number | undefined> = {};
  for (const { caste, count } of items)
    if (count !== 0) expected[caste.id] = caste.id in expected ? plus(expected[caste.id], count) : count;
  return { text: random.chance(0.5) ? text : cased(random, text), expected };
}

/** What two statements on one class come to; a number beside none keeps the number, none at first stays none. */
function plus(before: number | undefined, count: number | undefined): number | undefined {
  return before === undefined ? count : before + (count ?? 0);
}

function judge({ text, expected }: CasteCase): Outcome {
  const { counts, problems } = readCaste({ caste: text }, CASTES);
  const stated = counts.filter(({ caste }) => caste !== "not_stated");
  const answer = stated.length > 0 ? "accepted" : "refused";
  if (problems.some(({ found }) => found.length > 600))
    return { answer, wrong: "a problem quotes a text of any length" };
  const largest = [
    ...text.replaceAll(/[\u00AD\u200B-\u200F\u202A-\u202E\u2060-\u2069\uFEFF]/gu, "").matchAll(/\d+/g),
  ].reduce((sum, [digits]) => sum + Number(digits), 6 * text.length);
  const impossible = stated.find(
    ({ count }) => count !== undefined && !(Number.isSafeInteger(count) && count > 0 && count <= largest),
  );
  if (impossible !== undefined) return { answer, wrong: `counts ${JSON.stringify(impossible)}` };
  if (expected === undefined) return { answer };
  const found = Object.fromEntries(stated.map(({ caste, count }) => [caste, count]));
  const isRight =
    Object.keys(found).length === Object.keys(expected).length &&
    Object.entries(expected).every(([caste, count]) => caste in found && found[caste] === count);
  return isRight ? { answer } : { answer, wrong: `read as ${JSON.stringify(counts)}, not ${JSON.stringify(expected)}` };
}
