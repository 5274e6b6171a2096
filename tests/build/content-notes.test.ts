import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { tellContentFindings } from "../../src/build/content-notes.ts";
import type { Progress } from "../../src/build/progress.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

it("tells the first findings, writes all, and guards what a spreadsheet would run", () => {
  const folder = makeTemporaryFolder();
  const told: string[] = [];
  const progress = { note: (line: string) => told.push(line) } as unknown as Progress;
  const finding = {
    check: "unknown_part",
    file: "characters.csv",
    row: 2,
    field: "part",
    value: "=1+1",
    found: "is none",
    wayOut: "correct it",
  };
  const lines = tellContentFindings(
    Array.from({ length: 12 }, () => finding),
    folder,
    progress,
  );
  expect(lines).toHaveLength(12);
  expect(told).toHaveLength(9);
  expect(told[1]).toContain("characters.csv row 2, part “=1+1” is none; correct it");
  const written = readFileSync(join(folder, "content-findings.csv"), "utf8").split("\n");
  expect(written.slice(0, 2)).toEqual([
    "check,file,row,field,value,found,way_out",
    "unknown_part,characters.csv,2,part,'=1+1,is none,correct it",
  ]);
  expect(written).toHaveLength(14);
  expect(tellContentFindings([], folder, progress)).toEqual([]);
  expect(readFileSync(join(folder, "content-findings.csv"), "utf8").trim()).toBe(
    "check,file,row,field,value,found,way_out",
  );
});
