import { execFile } from "node:child_process";
import {
  appendFileSync,
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { appendDecisions, BACKUP } from "../../src/review/append-decisions.ts";
import type { NewDecision } from "../../src/review/merge-rulings.ts";
import { DECISION_COLUMNS, DecisionRow, readDecisions } from "../../src/scheme/decisions-file.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const MODULE = pathToFileURL(join(import.meta.dirname, "../../src/review/append-decisions.ts")).href;

function ruling(over: Partial<NewDecision> = {}): NewDecision {
  const { decisionID: _, when: __, ...empty } = DecisionRow.parse({ decisionID: "x", ruling: "use" });
  return { ...empty, recordKey: "walks:1", ...over };
}

/** A name that differs by its accents, a comma, quotation marks, lines, and what a spreadsheet would run. */
const HARD = [
  "Ó Néill, Ann",
  'says "not sure"',
  "two\nlines",
  "two\r\nlines",
  "=1+1",
  "'=1+1",
  "-3",
  "@x",
  "＝1",
  "a;b",
];

describe("appendDecisions", () => {
  it("makes the file with its header, then adds at the end alone", async () => {
    const folder = makeTemporaryFolder();
    await appendDecisions(folder, [ruling({ why: "first" })]);
    const first = readFileSync(join(folder, "decisions.csv"), "utf8");
    expect(first.split("\n")[0]).toBe(DECISION_COLUMNS.join(","));
    const { added } = await appendDecisions(folder, [ruling({ recordKey: "walks:2", ruling: "hold" })]);
    expect(readFileSync(join(folder, "decisions.csv"), "utf8").startsWith(first)).toBe(true);
    expect(readDecisions(folder).map(({ recordKey, ruling: said }) => [recordKey, said])).toEqual([
      ["walks:1", "use"],
      ["walks:2", "hold"],
    ]);
    expect(added[0]?.when).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/);
  });

  it("reads back what was written, whatever it is", async () => {
    const folder = makeTemporaryFolder();
    await appendDecisions(
      folder,
      HARD.map((why) => ruling({ why, saidPlace: why, who: why })),
    );
    expect(readDecisions(folder).map(({ why }) => why)).toEqual(HARD);
    const opened = readFileSync(join(folder, "decisions.csv"), "utf8");
    expect(opened).not.toMatch(/(^|,|\n)"?[=+@-]/);
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: "grapheme" }), fc.string({ unit: "binary-ascii" }), async (why, saidName) => {
        const { added } = await appendDecisions(folder, [ruling({ why, saidName })]);
        const last = readDecisions(folder).at(-1);
        expect([last?.why, last?.saidName]).toEqual(
          [why, saidName].map((cell) => cell.replaceAll("\0", "\uFFFD").trim()),
        );
        expect(last).toMatchObject(added[0] ?? {});
      }),
      { numRuns: 150 },
    );
  });

  it("writes nowhere but in the scheme's folder, whatever links stand in it", async () => {
    const [folder, outside] = [makeTemporaryFolder(), join(makeTemporaryFolder(), "of-another")];
    const file = join(folder, "decisions.csv");
    writeFileSync(outside, "theirs");
    mkdirSync(join(folder, "review"));
    await appendDecisions(folder, [ruling()]);
    const before = readFileSync(file, "utf8");
    const refused = async (place: string, words: RegExp) => {
      rmSync(place, { recursive: true, force: true });
      symlinkSync(outside, place);
      await expect(appendDecisions(folder, [ruling()])).rejects.toThrow(words);
      rmSync(place);
      expect(readFileSync(outside, "utf8")).toBe("theirs");
    };
    await refused(join(folder, BACKUP), /is a link/);
    await refused(join(folder, "review"), /is a link/);
    await refused(file, /leads out of/);
    writeFileSync(file, before);
    symlinkSync(outside, `${file}.new`);
    await appendDecisions(folder, [ruling()]);
    expect([readFileSync(outside, "utf8"), existsSync(`${file}.new`)]).toEqual(["theirs", false]);
  });

  it("leaves a file alone that nobody may write, and writes what is no text as it will be read", async () => {
    const folder = makeTemporaryFolder();
    await appendDecisions(folder, [ruling({ why: "a\0b\uD800" })]);
    expect(readDecisions(folder)[0]?.why).toBe("a\uFFFDb\uFFFD");
    const file = join(folder, "decisions.csv");
    const before = readFileSync(file, "utf8");
    chmodSync(file, 0o444);
    await expect(appendDecisions(folder, [ruling()])).rejects.toThrow("decisions.csv is read-only");
    expect(readFileSync(file, "utf8")).toBe(before);
  });

  it("keeps what an editor changed in between, in its columns, delimiter, line ends and mark", async () => {
    const folder = makeTemporaryFolder();
    const file = join(folder, "decisions.csv");
    writeFileSync(file, "\uFEFFruling;decisionID;note of ours;recordKey;why;when\r\nuse;mine;kept;walks:9;by hand;");
    await appendDecisions(folder, [ruling({ why: "by desk; really" })]);
    appendFileSync(file, "hold;mine2;kept too;walks:8;again;\r\n");
    await appendDecisions(folder, [ruling({ ruling: "leave out" })]);
    const text = readFileSync(file, "utf8");
    expect(
      text.startsWith("\uFEFFruling;decisionID;note of ours;recordKey;why;when\r\nuse;mine;kept;walks:9;by hand;\r\n"),
    ).toBe(true);
    expect(readDecisions(folder).map(({ ruling: said, why }) => [said, why])).toEqual([
      ["use", "by hand"],
      ["use", "by desk; really"],
      ["hold", "again"],
      ["leave out", ""],
    ]);
    expect(text.replaceAll("\r\n", "")).not.toContain("\n");
  });

  it("keeps the file as it was before this process wrote to it", async () => {
    const folder = makeTemporaryFolder();
    const before =
      "decisionID,recordKey,ruling,value,identification,partSeen,why,who,when,check,batch,filter,count,saidName,saidDate,saidPlace,saidKind\nd0,walks:0,use,,,,,,,,,,,,,,\n";
    writeFileSync(join(folder, "decisions.csv"), before);
    await appendDecisions(folder, [ruling()]);
    await appendDecisions(folder, [ruling()]);
    expect(readFileSync(join(folder, BACKUP), "utf8")).toBe(before);
    expect(readdirSync(folder).sort()).toEqual(["decisions.csv", "review"]);
    expect(readdirSync(join(folder, "review"))).toEqual(["decisions.csv.before"]);
  });

  it("writes nothing where the file, or a ruling, cannot be read", async () => {
    const folder = makeTemporaryFolder();
    const file = join(folder, "decisions.csv");
    await expect(appendDecisions(folder, [ruling({ ruling: "correct", value: "colour=red" })])).rejects.toThrow(
      "is no correction",
    );
    await expect(appendDecisions(folder, [ruling({ ruling: "withdraw", value: "d404" })])).rejects.toThrow(
      "is no decision and no batch",
    );
    await expect(appendDecisions(folder, [ruling({ ruling: "perhaps" as "use" })])).rejects.toThrow("write one of use");
    expect(existsSync(file)).toBe(false);
    writeFileSync(file, "decisionID,recordKey,ruling\nd1,walks:1,maybe\n");
    await expect(appendDecisions(folder, [ruling()])).rejects.toThrow("ruling is “maybe”");
    writeFileSync(file, 'decisionID,recordKey,ruling\nd1,walks:1,"use\n');
    await expect(appendDecisions(folder, [ruling()])).rejects.toThrow("quotation mark");
    writeFileSync(file, "decisionID,recordKey,ruling\nd1,walks:1,use\n");
    await expect(appendDecisions(folder, [ruling({ why: "kept where?" })])).rejects.toThrow("column why is missing");
    expect(readFileSync(file, "utf8")).toBe("decisionID,recordKey,ruling\nd1,walks:1,use\n");
  });

  it("follows no link out of the scheme's folder", async () => {
    const [folder, elsewhere] = [makeTemporaryFolder(), makeTemporaryFolder()];
    writeFileSync(join(elsewhere, "decisions.csv"), "");
    symlinkSync(join(elsewhere, "decisions.csv"), join(folder, "decisions.csv"));
    await expect(appendDecisions(folder, [ruling()])).rejects.toThrow("leads out of");
    expect(readFileSync(join(elsewhere, "decisions.csv"), "utf8")).toBe("");
  });

  it("loses nothing when three processes write at once", async () => {
    const folder = makeTemporaryFolder();
    mkdirSync(join(folder, "review"));
    const code = (who: string) => `
      import { appendDecisions } from "${MODULE}";
      const row = ${JSON.stringify(ruling())};
      await Promise.all(Array.from({ length: 20 }, (_, i) => appendDecisions(${JSON.stringify(folder)}, [{ ...row, who: "${who}", why: String(i) }])));`;
    const runs = ["ann", "ben", "cal"].map((who) =>
      promisify(execFile)(process.execPath, ["--input-type=module", "--eval", code(who)]),
    );
    await Promise.all(runs);
    const rows = readDecisions(folder);
    expect(new Set(rows.map(({ who, why }) => `${who} ${why}`)).size).toBe(60);
    expect(new Set(rows.map(({ decisionID }) => decisionID)).size).toBe(60);
  });
});
