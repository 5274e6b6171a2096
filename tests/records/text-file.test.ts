import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readBeginning, readTextFacts, type TextFacts, writeAsUtf8 } from "../../src/records/text-file.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

async function factsOf(content: string | Uint8Array): Promise<TextFacts> {
  const path = join(makeTemporaryFolder(), "walks.csv");
  writeFileSync(path, content);
  return await readTextFacts(path);
}

describe("a text file", () => {
  it.each<[string, string | Uint8Array, Partial<TextFacts>]>([
    [
      "plain",
      "a,b\n1,2\n",
      {
        encoding: "utf-8",
        byteOrderMark: false,
        validUtf8: true,
        lineEnding: "LF",
        blankLine: false,
        nul: false,
        bytes: 8,
      },
    ],
    ["with a mark", "\uFEFFa\r\nb\r\n", { encoding: "utf-8", byteOrderMark: true, lineEnding: "CRLF" }],
    ["of one line", "a,b", { lineEnding: "none" }],
    ["empty", "", { encoding: "utf-8", lineEnding: "none", bytes: 0, blankLine: false }],
    ["old", "a\rb\r", { lineEnding: "CR", blankLine: false }],
    ["mixed", "a\r\nb\nc", { lineEnding: "mixed" }],
    ["with a blank line", "a\n\nb\n", { blankLine: true }],
    ["with a blank line between CRLF", "a\r\n\r\nb\r\n", { blankLine: true, lineEnding: "CRLF" }],
    ["that begins blank", "\uFEFF\na\n", { blankLine: true }],
    ["that ends blank", "a\nb\n\n\n", { blankLine: false }],
    ["with NUL", "a\0b\n", { nul: true }],
    ["in Windows-1252", Buffer.from([0x53, 0x6b, 0xe5, 0x6e, 0x65]), { encoding: "windows-1252", validUtf8: false }],
    [
      "with a mark and a byte that is not UTF-8",
      Buffer.from([0xef, 0xbb, 0xbf, 0x61, 0xe5, 0x62]),
      { encoding: "utf-8", validUtf8: false },
    ],
    ["in UTF-16", Buffer.from("\uFEFFa\r\n\u010Ab\r\n", "utf16le"), { encoding: "utf-16le", lineEnding: "CRLF" }],
  ])("that is %s says so", async (_, content, facts) => {
    expect(await factsOf(content)).toMatchObject(facts);
  });

  it.each([
    ["in UTF-16 without a mark, little end first", Buffer.from("name,year\r\n", "utf16le"), "utf-16le"],
    ["in UTF-16 without a mark, big end first", Buffer.from("name,year\r\n", "utf16le").swap16(), "utf-16be"],
    ["with NUL here and there", "name,year\na\0b\0,2020\n", "utf-8"],
    ["of NUL", Buffer.alloc(64), "utf-8"],
  ])("that is %s is told by its bytes", async (_, content, encoding) => {
    expect(await factsOf(content)).toMatchObject({ encoding, byteOrderMark: false });
  });

  it("tells of several spaces before a quotation mark, across any border of the pieces it is read in", async () => {
    expect((await factsOf('a, "b"\n')).spacedMark).toBe(false);
    for (const before of [4_194_301, 4_194_302, 4_194_303, 4_194_304])
      expect((await factsOf(`${"a".repeat(before)}  "b"\n`)).spacedMark).toBe(true);
  });

  it("is told by its content", async () => {
    // SHA-256 of "abc": FIPS 180-2, appendix B.1.
    expect((await factsOf("abc")).sha256).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  });

  it("may have a character and a line break across any border of the pieces it is read in", async () => {
    for (const before of [4_194_300, 4_194_301, 4_194_302, 4_194_303]) {
      const facts = await factsOf(`${"a".repeat(before)}🐝\r\n\r\nb\r\n`);
      expect(facts).toMatchObject({ validUtf8: true, lineEnding: "CRLF", blankLine: true });
    }
  });

  it("is written again as UTF-8", async () => {
    const folder = makeTemporaryFolder();
    writeFileSync(join(folder, "a"), Buffer.from([0x80, 0x0d, 0x0a, 0xe9]));
    await writeAsUtf8(join(folder, "a"), "windows-1252", join(folder, "b"));
    expect(readBeginning(join(folder, "b"), "utf-8")).toBe("€\r\né");
  });
});
