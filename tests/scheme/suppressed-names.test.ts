import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openDatabase } from "../../src/engine/database.ts";
import { recorderKey, suppressedNames } from "../../src/scheme/suppressed-names.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

describe("recorderKey", () => {
  it("takes off case, accents and punctuation as the database's own functions do", async () => {
    const names = [
      "O’Brien,  Zoë (Ms)",
      "ÅSA ÖBERG",
      "Nguyễn Văn An",
      "Łukasz Żak-Nowak",
      "İpek",
      "Straße",
      "  ",
      "李 明",
      "Ann2",
    ];
    const database = await openDatabase({ spillFolder: join(makeTemporaryFolder(), "spill") });
    for (const name of names) {
      const [row] = await database.rows<{ recorder: string }>(
        "SELECT trim(regexp_replace(strip_accents(lower($name)), '[^\\p{L}\\p{N}]+', ' ', 'g')) AS recorder",
        { name },
      );
      expect([name, recorderKey(name)]).toEqual([name, row?.recorder]);
    }
    database.close();
  });
});

describe("isSuppressed", () => {
  const { isSuppressed } = suppressedNames(["Zoë Quill", "Hillside School", ""]);
  it.each([
    "zoe quill",
    "QUILL, Zoë",
    "Ms Z. (Zoe) Quill",
    "A. Reed & Zoë Quill",
    "A. Reed | quill zoe",
    "Hillside Primary School, year 4",
  ])("knows %s, whatever case, accents, order and company", (name) => expect(isSuppressed(name)).toBe(true));
  it.each(["Zoe Quilliam", "Quill", "A. Reed", "", "Old School"])("lets %s be", (name) =>
    expect(isSuppressed(name)).toBe(false),
  );
});
