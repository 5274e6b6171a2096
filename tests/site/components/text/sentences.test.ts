import { describe, expect, it } from "vitest";
import type { ChangeRow, Period, SeasonRow, SquareFile } from "../../../../src/publishing/contracts.ts";
import { netPercent } from "../../../../src/site/components/text/net-percent.ts";
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

const TWO: Period[] = [
  { id: "p1", label: "1990–2005", from: 1990, to: 2005 },
  { id: "p2", label: "2006–2024", from: 2006, to: 2024 },
];
const ONE: Period[] = [{ id: "p1", label: "1970–2024", from: 1970, to: 2024 }];
const CHANGE_WORDS = /found in both|newly|refound|change|earlier|since|compar/i;

/** Figures of the example sentence of the writing guide. */
const ROW: ChangeRow = {
  resolution_m: 10_000,
  territory: "all",
  from_period: "p1",
  to_period: "p2",
  comparable: 910,
  retained: 631,
  gained: 189,
  lost: 90,
  net: 99,
  net_percent: 13.7,
  interval_low: 66,
  interval_high: 132,
  minimum_visits: 5,
  turnover: 30.7,
  turnover_low: 27.7,
  turnover_high: 33.8,
  recorded_both_not_covered: 27,
  recorded_both_unsettled: 0,
  stricter: null,
  not_comparable_since: 356,
  not_comparable_before: 86,
  covered_both_no_record: 675,
  covered_one_no_record: 731,
  covered_neither: 932,
  judged: true,
  reason: "",
};

function castes(caste: string, label: string, at: number, number: number): SeasonRow {
  const records = Array.from({ length: 36 }, (_, third) => (third === at ? number : 0));
  return { caste, label, records, visits: records, total: number, left_out: 0 };
}

describe("rangeSentence", () => {
  it("gives the total, and how many of it are recent", () => {
    expect(rangeSentence({ records: 2000, hectads: 1379, hectads_latest: 1203, generalised_to: "none" }, TWO)).toBe(
      "Recorded in **1,379** 10 km squares, **1,203** of them since 2006.",
    );
    expect(rangeSentence({ records: 1, hectads: 1, hectads_latest: 0, generalised_to: "none" }, TWO)).toBe(
      "Recorded in **one** 10 km square, **none** of them since 2006.",
    );
    expect(rangeSentence({ records: 3, hectads: 0, hectads_latest: 0, generalised_to: "none" }, TWO)).toBe(
      "No record names a 10 km square.",
    );
    expect(rangeSentence({ records: 3, hectads: 0, hectads_latest: 0, generalised_to: "withheld" }, TWO)).toBe(
      "Where it was recorded is not shown.",
    );
    expect(rangeSentence({ records: 0, hectads: 0, hectads_latest: 0, generalised_to: "none" }, TWO)).toBe(
      "No record of it is used in this edition. That says nothing about where it lives.",
    );
  });
  it("has no word of change with one period", () => {
    expect(rangeSentence({ records: 2000, hectads: 1379, hectads_latest: 1379, generalised_to: "none" }, ONE)).toBe(
      "Recorded in **1,379** 10 km squares.",
    );
  });
});

describe("changeSentence", () => {
  it("is the sentence of the writing guide", () => {
    expect(changeSentence(ROW)).toBe(
      "Of 910 comparable squares it was found in both periods in 631, **newly found in 189 and not refound in 90**: a net change of +99 squares (95 % interval 66 to 132).",
    );
  });
  it("gives no direction where the interval includes none", () => {
    const row = { ...ROW, gained: 36, lost: 26, net: 10, interval_low: -5, interval_high: 25 };
    expect(changeSentence(row)).toContain("**the interval includes no change** (95 % interval −5 to +25)");
    expect(changeWord(row)).toBe("no direction");
  });
  it("says why where it cannot be judged, and gives no number", () => {
    const row = {
      ...ROW,
      judged: false,
      interval_low: null,
      interval_high: null,
      net_percent: null,
      reason: "4 comparable squares; 20 are needed",
    };
    expect(changeSentence(row)).toBe("Change **cannot be judged** at 10 km: 4 comparable squares; 20 are needed.");
    expect([changeWord(row), changeWord(null), netPercent(row)]).toEqual(["cannot be judged", "cannot be judged", ""]);
  });
  it("names the direction and the percentage for lists", () => {
    expect([changeWord(ROW), changeWord({ ...ROW, interval_low: -60, interval_high: -20 })]).toEqual(["more", "fewer"]);
    expect(
      [13.7, -11.4, 0.2, -0.2].map((net_percent) => netPercent({ net_percent, net: 5, retained: 50, lost: 10 })),
    ).toEqual(["+14 %", "−11 %", "0 %", "0 %"]);
  });
  it("gives net change in squares where the earlier ones are fewer than twenty", () => {
    expect(netPercent({ net_percent: 300, net: 57, retained: 18, lost: 1 })).toBe("+57 squares");
    expect(netPercent({ net_percent: -5.3, net: -1, retained: 18, lost: 1 })).toBe("−1 square");
    expect(netPercent({ net_percent: 285, net: 57, retained: 18, lost: 2 })).toBe("+285 %");
  });
  it("counts what cannot be compared", () => {
    expect(notComparable(ROW)).toMatch(/^\*\*442 more squares cannot be compared:\*\*/);
    expect(notComparable({ ...ROW, not_comparable_since: 1, not_comparable_before: 0 })).toContain(
      "**1 more square cannot be compared:** in one period too little else was recorded there, or it has no settled record. It says",
    );
    expect(notComparable({ ...ROW, not_comparable_since: 0, not_comparable_before: 0 })).toBe("");
  });
  it("shows no state in words that read as a verdict", () => {
    const words = (
      ["retained", "gained", "lost", "not_comparable_since", "not_comparable_before", "recorded"] as const
    ).map(stateWords);
    expect(words).toEqual([
      "found in both",
      "newly found",
      "not refound",
      "cannot be compared",
      "cannot be compared",
      "recorded",
    ]);
  });
});

describe("flightSentence", () => {
  it("names each caste at its time", () => {
    const said = flightSentence([
      castes("queen", "Queen", 11, 100),
      castes("worker", "Worker", 15, 100),
      castes("male", "Male", 20, 30),
      castes("not_stated", "Not stated", 3, 900),
    ]);
    expect(said).toBe(
      "Eight in ten queens were recorded from **21–30 April** to **21–30 April**, most in **21–30 April**. Workers from 1–10 June and males from 21–31 July.",
    );
  });
  it("gives no date on fewer than thirty records", () => {
    expect(flightSentence([castes("male", "Male", 20, 29)])).toBe(
      "Too few dated records for a season: 29, where 30 are needed.",
    );
    expect(flightSentence([castes("queen", "Queen", 11, 30), castes("male", "Male", 20, 29)])).toContain(
      "Too few dated records of males to say.",
    );
    expect(flightSentence([])).toBe("No used record has a date precise enough for a season.");
  });
  it("speaks of records where no caste was stated", () => {
    expect(flightSentence([castes("not_stated", "Not stated", 17, 60)])).toMatch(
      /^Eight in ten records were made from/,
    );
  });
  it("says a season loosely in lists", () => {
    expect(seasonWords(castes("a", "A", 7, 30).records)).toBe("mid March");
    expect(seasonWords(castes("a", "A", 7, 29).records)).toBe("");
  });
});

describe("yearsSentence", () => {
  const years = [
    { year: 2000, records: 120, visits: 0 },
    { year: 2010, records: 280, visits: 0 },
  ];
  const effort = [
    { year: 2000, visits: 1000 },
    { year: 2010, visits: 2000 },
  ];
  it("sets records beside the visits that gave them", () => {
    expect(yearsSentence(years, effort, TWO)).toBe(
      "**400** records, 70 % of them since 2006. For each 100 visits there were 12 in 1990–2005 and 14 in 2006–2024.",
    );
  });
  it("keeps a decimal of low rates", () => {
    const few = [
      { year: 2000, records: 6, visits: 0 },
      { year: 2010, records: 28, visits: 0 },
    ];
    expect(yearsSentence(few, effort, TWO)).toContain("0.6 in 1990–2005 and 1.4 in 2006–2024.");
  });
  it("never calls a rate of something nothing", () => {
    const one = [
      { year: 2000, records: 1, visits: 0 },
      { year: 2010, records: 28, visits: 0 },
    ];
    expect(
      yearsSentence(
        one,
        [
          { year: 2000, visits: 5000 },
          { year: 2010, visits: 2000 },
        ],
        TWO,
      ),
    ).toContain("under 0.1 in 1990–2005");
    expect(
      yearsSentence(
        one.slice(1),
        [
          { year: 2000, visits: 5000 },
          { year: 2010, visits: 2000 },
        ],
        TWO,
      ),
    ).toContain("there were 0 in 1990–2005");
  });
  it("names one year once", () => {
    expect(yearsSentence([{ year: 2020, records: 1, visits: 0 }], [], ONE)).toBe("**1 record** from 2020.");
  });
  it("gives no rate on fewer than a hundred visits and no share of fewer than twenty records", () => {
    expect(yearsSentence(years, [{ year: 2000, visits: 99 }], TWO)).toBe("**400** records, 70 % of them since 2006.");
    expect(yearsSentence([{ year: 2010, records: 19, visits: 0 }], [], TWO)).toBe("**19** records.");
  });
  it("has no word of change with one period", () => {
    expect(yearsSentence(years, effort, ONE)).toBe("**400 records** from 2000 to 2010.");
    expect(yearsSentence(years, effort, ONE)).not.toMatch(CHANGE_WORDS);
  });
});

describe("richnessSentence", () => {
  it("keeps its verbs to its numbers, and is silent of empty squares where there are none", () => {
    expect(richnessSentence(1, "4", 2)).toBe("1 square has 4 species; 2 have none recorded.");
    expect(richnessSentence(14, "15 or more", 1)).toBe("14 squares have 15 or more species; 1 has none recorded.");
    expect(richnessSentence(3, "4", 0)).toBe("3 squares have 4 species.");
  });
});

describe("squareSentence", () => {
  const square = {
    visits: [100, 212],
    taxa: [8, 9],
    taxa_all: 10,
    records: 900,
    tetrads: [{ visits: 2 }, { visits: 0 }],
  } as unknown as SquareFile;
  it("counts species, visits and tetrads", () => {
    expect(squareSentence(square, TWO)).toBe(
      "Ten species, nine of them since 2006. Recorded on 312 visits, in 1 of its 25 tetrads.",
    );
    expect(squareSentence({ ...square, taxa: [10], visits: [312] }, ONE)).toBe(
      "Ten species. Recorded on 312 visits, in 1 of its 25 tetrads.",
    );
    expect(squareSentence({ ...square, taxa: [0, 1], taxa_all: 1 }, TWO)).toMatch(/^One species\. /);
  });
  it("reads nothing into a square that nobody sent records from", () => {
    expect(squareSentence({ ...square, visits: [0, 0], records: 0, taxa_all: 0 }, TWO)).toBe(
      "Nobody has sent a record from this square. That says nothing about what lives here.",
    );
  });
  it("names an open period by its end", () => {
    expect(since({ id: "p0", label: "before 1990", from: null, to: 1989 })).toBe("until 1989");
  });
});
