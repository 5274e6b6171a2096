import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type Database, openDatabase } from "../../src/engine/database.ts";
import { type Letters, writeLetters } from "../../src/review/letters.ts";
import { type Selection, selectionCondition } from "../../src/review/selection.ts";
import { layWorklist } from "../../src/review/worklist.ts";
import type { Scheme } from "../../src/scheme/scheme.ts";
import { suppressedNames } from "../../src/scheme/suppressed-names.ts";
import { schemeOf } from "../records/interpreting.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";
import { review } from "./reviewing.ts";

const WALKS = `occurrenceID,scientificName,eventDate,gridReference,recordedBy,caste,locality,county
a1,Bombus vestalis,2011-07-12,SP5006,Zoë Quill,worker,by the mill,Oxon
a2,Bombus xxx,2011-07-12,SP5006,"QUILL, Zoe",,,
a3,Bombus vestalis,2011-07-13,SP5006,zoe quill,worker,,
a4,Bombus vestalis,2011-07-13,SP5006,A. Reed,worker,,Oxon
a5,Bombus distinguendus,2011-07-13,SP5006,A. Reed,queen | male worker,,
a6,Bombus vestalis,2011-07-13,SP5006,,worker,,
a7,Bombus vestalis,2011-07-13,SP5006,B. Hush,worker,,
`;

let database: Database;
let folder: string;
let scheme: Scheme;
beforeEach(async () => {
  folder = join(makeTemporaryFolder(), "letters");
  database = await openDatabase({ spillFolder: join(makeTemporaryFolder(), "spill") });
  scheme = { ...schemeOf([{ id: "walks", files: "walks.csv" }]), suppressed: suppressedNames(["B Hush"]) };
  await review(database, { walks: WALKS });
  await layWorklist(database);
});
afterEach(() => database.close());

async function write(selection: Selection = {}): Promise<{ made: Letters; texts: Record<string, string> }> {
  const made = await writeLetters(database, scheme, { folder, condition: selectionCondition(selection, scheme) });
  const texts = readdirSync(folder)
    .filter((name) => name.endsWith(".txt"))
    .map((name) => [name, readFileSync(join(folder, name), "utf8")]);
  return { made, texts: Object.fromEntries(texts) as Record<string, string> };
}

/** The name as written, and the first figures of the SHA-256 of the key "quill zoe" (sha256sum of GNU coreutils 9.1). */
const LETTER = "zoe-quill-75d500.txt";

describe("writeLetters", () => {
  it("writes one letter a recorder, however the name is spelt, with what each record said and what would settle it", async () => {
    const { texts } = await write({ recorder: "ZOE QUILL" });
    const [letter] = Object.values(texts);
    expect(Object.keys(texts)).toEqual([LETTER]);
    expect(letter).toContain("3 of your records");
    expect(letter).toContain("1. Bombus vestalis, 2011-07-12, SP5006, by the mill, worker (walks:a1)");
    expect(letter).toMatch(/What would settle it: correct the caste or the name/);
    expect(letter?.split("\n").every((line) => line.length <= 78)).toBe(true);
  });

  it("writes none where there is no name, and none to people who are named nowhere, and counts both", async () => {
    const { made, texts } = await write();
    expect(made).toMatchObject({ withoutName: 1, suppressed: 1 });
    expect(Object.values(texts).join()).not.toContain("Hush");
    expect(readFileSync(join(folder, "letters.csv"), "utf8")).not.toContain("Hush");
  });

  it("quotes nobody else's records", async () => {
    const { texts } = await write();
    const reed = Object.values(texts).find((text) => text.includes("Reed"));
    expect(reed).not.toMatch(/a1|a3|mill|Quill/);
  });

  it("replaces the letters of the time before", async () => {
    await write();
    const { texts } = await write({
      region: "oxon",
      taxon: "Bombus vestalis",
      source: "walks",
      check: "impossible_caste",
    });
    expect(Object.keys(texts).length).toBe(2);
    expect(existsSync(join(folder, LETTER))).toBe(true);
  });

  it("says of a taxon on the sensitive list only what is asked, not how it was found", async () => {
    await database.run("UPDATE worklist SET message = 'nearest square 212 km away' WHERE record_key = 'walks:a4'");
    expect(Object.values((await write()).texts).join()).toContain("212 km");
    const entry = { taxonID: "invented-vestalis", level: "10 km", territories: [], castes: [], months: [] };
    scheme = { ...scheme, sensitive: [entry as unknown as Scheme["sensitive"][number]] };
    expect(Object.values((await write()).texts).join()).not.toContain("212 km");
  });

  it("asks no recorder about others' opinions, and quotes no file of others", async () => {
    const ask = (key: string, check: string, message: string) =>
      database.run("UPDATE worklist SET check_name = $check, message = $message WHERE record_key = $key", {
        key: `walks:${key}`,
        check,
        message,
      });
    await ask("a1", "opinion_waits", "others say: hold (ben)");
    await ask("a3", "named_site_point", "30 records of 12 recorders have exactly this point");
    await ask("a4", "same_id_other_record", "row 7 of records/of-ben.csv has this id too");
    const letters = Object.values((await write()).texts).join();
    expect(letters).not.toMatch(/\bben\b|12 recorders/);
    expect(letters).toContain("Asked: one id on records that differ.");
  });
});

describe("selectionCondition", () => {
  it("refuses a taxon that is not in the checklist and a source that is none", () => {
    expect(() => selectionCondition({ taxon: "Apis mellifera" }, scheme)).toThrow("--taxon is Apis mellifera");
    expect(() => selectionCondition({ source: "x" }, scheme)).toThrow("--source is x; name one of walks");
  });

  it("cannot be led out of its quotation marks", async () => {
    const condition = selectionCondition({ region: "x' OR true --", recorder: "'; DROP TABLE worklist; --" }, scheme);
    expect(await database.rows(`SELECT * FROM worklist AS w WHERE ${condition}`)).toEqual([]);
  });
});
