import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import type { ChangeRow, Period, SeasonRow, SquareFile } from "../../../../src/publishing/contracts.ts";
import { inPeriod } from "../../../../src/site/components/text/in-period.ts";
import { fileSize, grouped, inWords, percentage, signed } from "../../../../src/site/components/text/numbers.ts";
import {
  changeSentence,
  changeWord,
  flightSentence,
  notComparable,
  rangeSentence,
  richnessSentence,
  seasonWords,
  since,
  squareSentence,
  yearsSentence,
} from "../../../../src/site/components/text/sentences.ts";
import { stateWords } from "../../../../src/site/components/text/states.ts";
import {
  longDate,
  monthLetters,
  monthName,
  thirdDays,
  thirdLoosely,
} from "../../../../src/site/components/text/thirds.ts";
import { capital, listed, small } from "../../../../src/site/components/text/words.ts";
import { markEnglish } from "../../../../src/site/words/fallback.ts";

beforeAll(() => vi.stubEnv("ATLAS_LANGUAGE", "fr"));
afterAll(() => vi.unstubAllEnvs());

const PERIODS: Period[] = [
  { id: "p1", label: "1990–2005", from: 1990, to: 2005 },
  { id: "p2", label: "2006–2024", from: 2006, to: 2024 },
];
/** The atlas's spaces that do not break, as plain ones. */
const plain = (text: string) => text.replaceAll("\u00a0", " ");

// Month names, order of a date and grouping of thousands are those of French in Unicode CLDR 48; “1er” for the first day
// and a no-break space before : ; ? ! % are common practice.
describe("numbers, dates and lists in French", () => {
  it("group by a space, and keep a true minus and a decimal comma", () => {
    expect([grouped(18_826), grouped(-1379), signed(99), signed(-5)].map(plain)).toEqual([
      "18 826",
      "−1 379",
      "+99",
      "−5",
    ]);
    expect([fileSize(999), fileSize(41_300), fileSize(3_100_000)].map(plain)).toEqual([
      "999 octets",
      "41 ko",
      "3,1 Mo",
    ]);
    expect(grouped(18_826)).toBe("18\u00a0826");
  });
  it("write percentages with a space that does not break", () => {
    expect([percentage(15, 20), percentage(1, 1000), percentage(999, 1000)]).toEqual([
      "75\u00a0%",
      "moins de 1\u00a0%",
      "plus de 99\u00a0%",
    ]);
  });
  it("write small numbers in words", () => {
    expect([0, 1, 12, 13].map(inWords)).toEqual(["aucun", "un", "douze", "13"]);
  });
  it("name days, months and thirds", () => {
    expect([longDate("2025-03-01"), longDate("2025-08-17"), longDate("spring")]).toEqual([
      "1er mars 2025",
      "17 août 2025",
      "spring",
    ]);
    expect([6, 7, 8, 5].map(thirdDays)).toEqual(["1er–10 mars", "11–20 mars", "21–31 mars", "21–29 février"]);
    expect([6, 7, 8].map(thirdLoosely)).toEqual(["début mars", "mi-mars", "fin mars"]);
    expect([monthName(7), monthLetters().join("")]).toEqual(["août", "JFMAMJJASOND"]);
  });
  it("list with “et”, and turn only the first letter of a marked word", () => {
    expect(listed(["reines", "ouvrières", "mâles"])).toBe("reines, ouvrières et mâles");
    expect([capital(markEnglish("queen")), small(markEnglish("Queen"))]).toEqual([
      markEnglish("Queen"),
      markEnglish("queen"),
    ]);
  });
});

describe("sentences in French", () => {
  const row = {
    resolution_m: 10_000,
    comparable: 910,
    retained: 631,
    gained: 189,
    lost: 90,
    net: 99,
    interval_low: 66,
    interval_high: 132,
    not_comparable_since: 0,
    not_comparable_before: 1,
    judged: true,
    reason: "",
  } as ChangeRow;

  it("say ranges, with none, one and many", () => {
    const range = (hectads: number, hectads_latest: number) =>
      rangeSentence({ records: 5, hectads, hectads_latest, generalised_to: "none" }, PERIODS);
    expect(plain(range(1379, 1203))).toBe("Des données dans **1 379** carrés de 10 km, dont **1 203** depuis 2006.");
    expect(range(1, 0)).toBe("Des données dans **un** carré de 10 km, dont **aucun** depuis 2006.");
    expect([since(PERIODS[1] as Period), inPeriod("1990–2005"), inPeriod("to 1989")]).toEqual([
      "depuis 2006",
      "en 1990–2005",
      "jusqu’en 1989",
    ]);
  });
  it("say change and what cannot be compared", () => {
    expect(plain(changeSentence(row))).toBe(
      "Sur 910 carrés comparables, trouvé aux deux périodes dans 631, **nouvellement trouvé dans 189 et non retrouvé dans 90** : un bilan de +99 carrés (intervalle à 95 % : 66 à 132).",
    );
    expect([changeWord(row), changeWord(null), stateWords("lost")]).toEqual(["plus", "non jugeable", "non retrouvé"]);
    expect(notComparable(row)).toMatch(/^\*\*1 autre carré ne peut pas être comparé/);
  });
  it("say seasons by the scheme’s own plural of a caste", () => {
    const at = (third: number) => Array.from({ length: 36 }, (_, index) => (index === third ? 40 : 0));
    const caste = (label: string, many: string, third: number): SeasonRow => ({
      ...{ caste: label, label, many, records: at(third), visits: at(third), total: 40, left_out: 0 },
    });
    expect(plain(flightSentence([caste("Reine", "Reines", 9), caste("Ouvrière", "Ouvrières", 12)]))).toBe(
      "Pour les reines, huit données sur dix vont des **1er–10 avril** aux **1er–10 avril** ; le plus grand nombre date des **1er–10 avril**. Les ouvrières dès les 1er–10 mai.",
    );
    expect(seasonWords(at(10).map((count, third) => count + (third === 25 ? 40 : 0)))).toBe("mi-avril à mi-septembre");
  });
  it("say years and squares", () => {
    const years = [
      { year: 2000, records: 30, visits: 5 },
      { year: 2010, records: 90, visits: 9 },
    ];
    const effort = [
      { year: 2000, visits: 1000 },
      { year: 2010, visits: 1000 },
    ];
    expect(plain(yearsSentence(years, effort, PERIODS))).toBe(
      "**120** données, dont 75 % depuis 2006. Pour 100 visites : 3,0 en 1990–2005 et 9,0 en 2006–2024.",
    );
    const square = { records: 9, visits: [2, 10], taxa: [1, 1], taxa_all: 10, tetrads: [{ visits: 1 }] };
    expect(squareSentence(square as unknown as SquareFile, PERIODS)).toBe(
      "Dix espèces, dont une depuis 2006. Des données de 12 visites, dans 1 de ses 25 carrés de 2 km.",
    );
    expect(plain(richnessSentence(1, "4", 2))).toBe("1 carré compte 4 espèces ; 2 n’en ont aucune de notée.");
  });
});
