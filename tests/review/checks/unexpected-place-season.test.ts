import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type Database, openDatabase } from "../../../src/engine/database.ts";
import { makeTemporaryFolder } from "../../support/temporary-folder.ts";
import { review } from "../reviewing.ts";

const HEADER =
  "occurrenceID,scientificName,eventDate,gridReference,recordedBy,caste,evidence,identificationVerificationStatus,occurrenceRemarks";
const COMMON = "Bombus pascuorum";
const SCARCE = "Bombus humilis";

let database: Database;
let next = 0;
beforeEach(async () => {
  next = 0;
  database = await openDatabase({ spillFolder: join(makeTemporaryFolder(), "spill") });
});
afterEach(() => database.close());

function row(
  name: string,
  date: string,
  square: string,
  recorder: string,
  more: { caste?: string; evidence?: string; status?: string; remarks?: string } = {},
) {
  next += 1;
  return `r${next},${name},${date},${square},${recorder},${more.caste ?? ""},${more.evidence ?? ""},${more.status ?? ""},${more.remarks ?? ""}`;
}

/** One visit a day from 1 June to 30 July in a 1 km square, each by one of ten people. */
function visits(name: string, square: string, { count = 60, year = 2012, month = 6 } = {}): string[] {
  return Array.from({ length: count }, (_, day) =>
    row(
      name,
      `${year}-${String(month + Math.floor(day / 30)).padStart(2, "0")}-${String((day % 30) + 1).padStart(2, "0")}`,
      square,
      `Recorder ${day % 10}`,
    ),
  );
}

/** In a world of 240 visits one in 20 is seldom: 15 / 135 of a quarter is one in 36. */
async function asked(
  rows: readonly string[],
  { unexpected = {}, ...checks }: { unexpected?: object; evidence?: object } = {},
) {
  const more = { checks: { ...checks, unexpected: { one_visit_in: 20, ...unexpected } } };
  const { findings, records } = await review(database, { walks: [HEADER, ...rows].join("\n") }, { more });
  const found = findings.filter(({ check_name }) => check_name === "unexpected_place_season");
  return { found, records, keys: found.map(({ row: line }) => `r${line - 1}`) };
}

/** The scarce one at home in TQ: 60 visits with it, and 120 with the common one far off in SJ. */
const HOME = () => [
  ...visits(SCARCE, "TQ2080"),
  ...visits(COMMON, "TQ2181"),
  ...visits(COMMON, "SJ5050"),
  ...visits(COMMON, "SJ5151"),
];

describe("unexpected here and now", () => {
  it("asks about a record far from all others, with its numbers, and holds nothing", async () => {
    const { found, records, keys } = await asked([...HOME(), row(SCARCE, "2012-07-04", "SJ5252", "Zoe")]);
    expect(keys).toEqual(["r241"]);
    // 120 visits of others at SJ55; TQ28 and SJ55 are 170 km east and 170 km south of one another: √(170² + 170²) = 240 km.
    expect(found[0]?.message).toContain("none of 120 visits by others within 60 km reported it in 2005–2019");
    expect(found[0]?.message).toMatch(/nearest square with it then 2(39|40|41) km away/);
    expect(found[0]).toMatchObject({
      severity: "ask",
      field: "scientificName",
      value: SCARCE,
      subject: "Bombus humilis in SJ55",
    });
    expect(records.at(-1)).toMatchObject({ status: "used" });
  });

  it("takes none of the recorder's own reports, nor a nameless copy of one, as support", async () => {
    const own = ["2011-06-20", "2012-07-04", "2012-07-05", "2013-07-06"].map((date) =>
      row(SCARCE, date, "SJ5252", "Zoe"),
    );
    const copy = row(SCARCE, "2012-07-04", "SJ5252", "");
    const { keys } = await asked([...HOME(), ...own, copy]);
    expect(keys).toEqual(["r241", "r242", "r243", "r244", "r245"]);
  });

  it("takes a place as expected once three others reported it there, and asks all of two", async () => {
    const people = (count: number) =>
      Array.from({ length: count }, (_, index) =>
        row(SCARCE, `2012-07-0${index + 1}`, `SJ5${index}52`, `New ${index}`),
      );
    expect((await asked([...HOME(), ...people(2)])).keys).toEqual(["r241", "r242"]);
    next = 0;
    expect((await asked([...HOME(), ...people(4)])).keys).toEqual([]);
  });

  it("counts a confirmed record as three people, and does not ask about it", async () => {
    const pair = () => [
      row(SCARCE, "2012-07-01", "SJ5252", "Zoe", { status: "seen by the panel" }),
      row(SCARCE, "2012-07-09", "SJ5353", "Yan"),
    ];
    expect((await asked([...HOME(), ...pair()])).keys).toEqual(["r241", "r242"]);
    next = 0;
    expect(
      (await asked([...HOME(), ...pair()], { evidence: { confirmed_words: ["Seen by the panel"] } })).keys,
    ).toEqual([]);
  });

  it("does not take reports of other years as support", async () => {
    const old = visits(SCARCE, "SJ5050", { count: 30, year: 1990 });
    const { found } = await asked([...HOME(), ...old, row(SCARCE, "2012-07-04", "SJ5252", "Zoe")]);
    expect(found.map(({ row: line }) => line)).toEqual([272]);
  });

  it("asks about a newcomer before anybody else reported it, though few visits were made near", async () => {
    const before = visits(COMMON, "TQ2080", { count: 60, year: 1982 });
    const { found } = await asked([...HOME(), ...before, row(SCARCE, "1982-07-04", "SJ5252", "Zoe")]);
    // By hand: a fifth of 300 visits in all; none of 60 in those years leaves 15 / 75 of it: one in 25, below one in 20.
    expect(found.map(({ message }) => message)).toEqual([
      "none of 60 visits by others anywhere in the atlas reported it in 1975–1989; here and at this time of year it is expected on about one visit in 25; its evidence does not show T2",
    ]);
  });

  it("counts a member's records for its aggregate, and none of the aggregate for a member", async () => {
    const home = HOME();
    const group = row("Bombus muscorum/humilis", "2012-07-04", "TQ2080", "Zoe");
    expect((await asked([...home, group])).keys).toEqual([]);
    next = 0;
    const groups = visits("Bombus muscorum/humilis", "SJ5050", { count: 30 });
    expect((await asked([...HOME(), ...groups, row(SCARCE, "2012-07-04", "SJ5252", "Zoe")])).keys).toContain("r271");
  });

  it("says nothing where too few visits were made to know", async () => {
    const { keys } = await asked([
      ...visits(SCARCE, "TQ2080"),
      ...visits(COMMON, "SJ5050", { count: 5 }),
      row(SCARCE, "2012-07-04", "SJ5252", "Zoe"),
    ]);
    expect(keys).toEqual([]);
  });

  it("asks about a date outside the season in days, with its bound", async () => {
    const { found, keys } = await asked([...visits(COMMON, "TQ2080"), row(COMMON, "2012-01-01", "TQ2080", "Zoe")]);
    expect(keys).toEqual(["r61"]);
    // Bounds leave out the outermost two at least: with 1 January among 61 days, the third is 2 June, day 154 of 2012; 153 days.
    expect(found[0]?.message).toBe("153 days before 2 June, before which lie 2 of 61 records");
    expect(found[0]).toMatchObject({
      field: "eventDate",
      value: "2012-01-01",
      way_out: "see whether day and month are right, then the name",
    });
  });

  it("asks nothing of a nest, and notes a taxon that is active all year", async () => {
    const winter = (remarks: string) => row(COMMON, "2012-01-01", "TQ2080", "Zoe", { remarks });
    expect((await asked([...visits(COMMON, "TQ2080"), winter("old nest in a wall")])).keys).toEqual([]);
    next = 0;
    const { found } = await asked([...visits(COMMON, "TQ2080"), winter("")], {
      unexpected: { all_year: ["invented-pascuorum"] },
    });
    expect(found.map(({ severity }) => severity)).toEqual(["note"]);
  });

  it("takes the turn of the year as no edge of a season", async () => {
    const december = Array.from({ length: 31 }, (_, day) =>
      row(COMMON, `2012-12-${String(day + 1).padStart(2, "0")}`, "TQ2080", `Recorder ${day % 5}`),
    );
    const january = Array.from({ length: 31 }, (_, day) =>
      row(COMMON, `2013-01-${String(day + 1).padStart(2, "0")}`, "TQ2080", `Recorder ${day % 5}`),
    );
    expect((await asked([...december, ...january])).keys).toEqual([]);
  });

  it("asks about a first for a territory, once many visits were made there", async () => {
    const irish = visits(COMMON, "N9040");
    const { found } = await asked([...HOME(), ...irish, row(SCARCE, "2012-07-04", "N9040", "Zoe")], {
      unexpected: { first_after_visits: 50 },
    });
    expect(found).toHaveLength(1);
    expect(found[0]?.message).toMatch(/^first for Ireland \(60 visits by others by then\); none of 60 visits/);
  });

  it("takes nobody's first record for a first where others came later, or where one person made all visits", async () => {
    const unexpected = { first_after_visits: 50 };
    const pioneer = row(SCARCE, "1950-07-04", "N9040", "Zoe");
    expect((await asked([...HOME(), ...visits(COMMON, "N9040"), pioneer], { unexpected })).keys).toEqual([]);
    const survey = Array.from({ length: 60 }, (_, day) =>
      row(COMMON, `2012-0${6 + Math.floor(day / 30)}-${10 + (day % 20)}`, `SP50${10 + day}`, "Survey"),
    );
    expect((await asked([...survey, row(SCARCE, "2012-07-04", "SP5011", "Survey")], { unexpected })).keys).toEqual([]);
  });

  it("says which part the evidence does not show, and leaves the name alone where it does", async () => {
    const { found } = await asked(
      [...HOME(), row("Bombus bohemicus", "2012-07-04", "TQ2080", "Zoe", { caste: "male", evidence: "photograph" })],
      {
        unexpected: { first_after_visits: 50 },
      },
    );
    expect(found[0]?.message).toBe(
      "first for Great Britain and the Isle of Man (240 visits by others by then); its evidence does not show the antenna",
    );
    next = 0;
    const specimen = await asked(
      [...HOME(), row("Bombus bohemicus", "2012-07-04", "TQ2080", "Zoe", { caste: "male", evidence: "specimen" })],
      {
        unexpected: { first_after_visits: 50 },
      },
    );
    expect(specimen.found[0]?.way_out).toBe("see whether name and place are right; its evidence can settle the name");
  });
});
