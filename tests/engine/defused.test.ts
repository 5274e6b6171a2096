import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openDatabase } from "../../src/engine/database.ts";
import { defused } from "../../src/engine/defused.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

describe("defused", () => {
  it.each([
    ["=1+1", "'=1+1"],
    ["+44", "'+44"],
    ["-1+cmd|' /C calc'!A0", "'-1+cmd|' /C calc'!A0"],
    ["-5", "'-5"],
    ["@SUM(A1)", "'@SUM(A1)"],
    ["\t=1", "'\t=1"],
    ["\r=1", "'\r=1"],
    ["\n=1", "'\n=1"],
    ["＝1", "'＝1"],
    ["a=1", "a=1"],
    ["'=1", "'=1"],
    ["5-1", "5-1"],
    ["", ""],
  ])("writes %j as %j", async (text, safe) => {
    const database = await openDatabase({ spillFolder: join(makeTemporaryFolder(), "spill") });
    const rows = await database.rows<{ safe: string }>(
      `SELECT ${defused("text")} AS safe FROM (SELECT $text AS text)`,
      { text },
    );
    database.close();
    expect(rows).toEqual([{ safe }]);
  });
});
