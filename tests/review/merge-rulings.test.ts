import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { writeXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { refuseUnread } from "../../src/review/desk/ruling-request.ts";
import { mergeRulings, type SaidNow } from "../../src/review/merge-rulings.ts";
import { type ReturnedRow, readReturned } from "../../src/review/returned-rows.ts";
import { DecisionRow } from "../../src/scheme/decisions-file.ts";
import { decisionsInForce } from "../../src/scheme/decisions-in-force.ts";
import { schemeOf } from "../records/interpreting.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const SAID = { saidName: "Bombus humilis", saidDate: "2011-07-12", saidPlace: "SP5006", saidKind: "worker" };
const saidNow = new Map<string, SaidNow>([
  ["walks:1", { ...SAID, mark: "m1" }],
  ["walks:2", { ...SAID, mark: "m1" }],
]);

const row = (returned: Partial<ReturnedRow>): ReturnedRow => ({
  record: "walks:1",
  mark: "m1",
  ruling: "use",
  value: "",
  identification: "",
  part_seen: "",
  why: "",
  who: "A",
  file: "a.csv",
  row: 2,
  ...returned,
});

function merge(rows: ReturnedRow[], decisions: Partial<DecisionRow>[] = [], final = false) {
  const inForce = decisionsInForce(
    decisions.map((decision, index) => DecisionRow.parse({ decisionID: `d${index}`, ...decision })),
  );
  return mergeRulings(rows, { saidNow, inForce, final });
}

describe("mergeRulings", () => {
  it("adds rulings with what the record says now, an identification alone as such", () => {
    const { decisions, conflicts } = merge([
      row({ why: "band seen" }),
      row({ record: "walks:2", ruling: "", identification: "confirmed on photograph", part_seen: "T2" }),
    ]);
    expect(conflicts).toEqual([]);
    expect(decisions).toMatchObject([
      { recordKey: "walks:1", ruling: "use", why: "band seen", ...SAID },
      { recordKey: "walks:2", ruling: "identify", identification: "confirmed on photograph", partSeen: "T2" },
    ]);
  });

  it("keeps two that agree, and one person's ruling on two questions of one record once", () => {
    const { decisions } = merge([row({}), row({ row: 3 }), row({ file: "b.csv", who: "B" })]);
    expect(decisions.map(({ who, ruling }) => [who, ruling])).toEqual([
      ["A", "use"],
      ["B", "use"],
    ]);
  });

  it("takes rulings that disagree as opinions, and says so", () => {
    const { decisions, conflicts } = merge([
      row({ ruling: "re-identify", value: "Bombus muscorum" }),
      row({ file: "b.csv", who: "B" }),
    ]);
    expect(decisions.map(({ ruling, value }) => [ruling, value])).toEqual([
      ["opinion", "re-identify Bombus muscorum"],
      ["opinion", "use"],
    ]);
    expect(conflicts.map(({ file, problem }) => [file, problem])).toEqual([
      ["a.csv", "others rule otherwise"],
      ["b.csv", "others rule otherwise"],
    ]);
  });

  it("lets a ruling in force stand, unless the rows are final", () => {
    const inForce = [{ recordKey: "walks:1", ruling: "hold" as const }];
    expect(merge([row({})], inForce)).toMatchObject({
      decisions: [{ ruling: "opinion", value: "use" }],
      conflicts: [{ problem: "“hold” is in force" }],
    });
    expect(merge([row({})], inForce, true)).toMatchObject({ decisions: [{ ruling: "use" }], conflicts: [] });
    expect(merge([row({ ruling: "hold" })], inForce)).toEqual({ decisions: [], alreadySo: 1, conflicts: [] });
  });

  it("tells a correction that could not be read, and takes the others", () => {
    const scheme = schemeOf([{ id: "walks", files: "walks.csv" }]);
    const merged = mergeRulings(
      [
        row({ ruling: "correct", value: "eventDate=31 foo" }),
        row({ record: "walks:2", ruling: "correct", value: "eventDate=2011-07-13" }),
      ],
      { saidNow, inForce: new Map(), refuse: (one) => refuseUnread(one, scheme) },
    );
    expect(merged.conflicts.map(({ problem }) => problem)).toEqual([
      "eventDate is 31 foo, which is no date; write year-month-day",
    ]);
    expect(merged.decisions.map(({ recordKey }) => recordKey)).toEqual(["walks:2"]);
  });

  it("tells rows that cannot be taken, and takes the others", () => {
    const { decisions, conflicts } = merge([
      row({ record: "walks:9" }),
      row({ ruling: "accept" }),
      row({ identification: "sure" as never }),
      row({ ruling: "re-identify" }),
      row({ mark: "m2" }),
      row({ record: "walks:2" }),
    ]);
    expect(conflicts.map(({ problem }) => problem)).toEqual([
      "no record has this key",
      "“accept” is no ruling",
      "“sure” is no state of an identification",
      "re-identify needs a value",
      "the record has changed since: Bombus humilis, 2011-07-12, SP5006, worker",
    ]);
    expect(decisions.map(({ recordKey }) => recordKey)).toEqual(["walks:2"]);
  });
});

describe("readReturned", () => {
  const header = ["record", "mark", "ruling", "value", "identification", "part_seen", "why", "who"];
  const ruled = ["walks:1", "m1", "use", "", "", "", "seen, and heard", "A"];
  const empty = ["walks:2", "m1", "", "", "", "", "", ""];

  it("reads a CSV and a workbook alike, without rows that say nothing", async () => {
    const folder = makeTemporaryFolder();
    const [csv, xlsx] = [join(folder, "pack.csv"), join(folder, "pack.xlsx")];
    writeFileSync(csv, [header, ruled.map((cell) => `"${cell}"`), empty].map((cells) => cells.join(",")).join("\n"));
    writeFileSync(xlsx, await writeXlsx({ sheets: [{ name: "worklist", rows: [header, ruled, empty] }] }));
    const [one, other] = [await readReturned(csv), await readReturned(xlsx)];
    expect(one).toMatchObject([{ record: "walks:1", ruling: "use", why: "seen, and heard", file: "pack.csv", row: 2 }]);
    expect(other).toEqual([{ ...one[0], file: "pack.xlsx" }]);
  });

  it("refuses a workbook that is no worklist", async () => {
    const file = join(makeTemporaryFolder(), "other.xlsx");
    writeFileSync(file, await writeXlsx({ sheets: [{ name: "x", rows: [["a"], ["b"]] }] }));
    await expect(readReturned(file)).rejects.toThrow("has no sheet with the columns of a worklist");
  });
});
