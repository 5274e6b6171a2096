import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { makeScheme } from "../../src/build/make-scheme.ts";
import { Mistake } from "../../src/mistake.ts";
import { runScheme } from "../support/run-scheme.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

describe("makeScheme", () => {
  it("makes a scheme that builds as it stands, whose records are all used and say that they are invented", async () => {
    const folder = makeTemporaryFolder();
    makeScheme(join(folder, "new/scheme"));
    const { answer } = await runScheme(join(folder, "new/scheme"), folder);
    const records = readFileSync(join(folder, "new/scheme/records/example.csv"), "utf8").trimEnd().split("\n").slice(1);
    expect(answer.records).toEqual({ read: records.length, used: records.length, held: 0, not_used: 0 });
    expect(records.every((record) => record.startsWith("invented-"))).toBe(true);
    expect(readFileSync(join(folder, "published/data/1/taxa.csv"), "utf8").split("\n")[1]).toMatch(/,true$/);
  });

  it("fills an empty folder, and refuses one that holds anything, or a file", () => {
    const folder = makeTemporaryFolder();
    mkdirSync(join(folder, "empty"));
    makeScheme(join(folder, "empty"));
    expect(readdirSync(join(folder, "empty"))).toContain("atlas.yaml");
    expect(() => makeScheme(join(folder, "empty"))).toThrow(
      new Mistake(join(folder, "empty"), "is not empty", "name a new or empty folder"),
    );
    writeFileSync(join(folder, "file"), "");
    expect(() => makeScheme(join(folder, "file"))).toThrow(
      new Mistake(join(folder, "file"), "is a file", "name a new or empty folder"),
    );
  });
});
