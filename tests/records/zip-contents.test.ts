import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { zipContents } from "../../src/records/zip-contents.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";
import { workbookAround } from "./mutated-files.ts";

describe("a zip", () => {
  it("tells the names of what is in it and how large that is", async () => {
    const path = join(makeTemporaryFolder(), "a.zip");
    writeFileSync(path, await workbookAround("x".repeat(1000), { "more.txt": "y".repeat(500) }));
    const contents = await zipContents(path);
    expect(contents).toMatchObject({
      names: expect.arrayContaining(["more.txt", "xl/worksheets/sheet1.xml"]) as unknown,
    });
    expect(typeof contents === "string" ? 0 : contents.unpackedBytes).toBeGreaterThan(1500);
  });

  it("that is none says so", async () => {
    const path = join(makeTemporaryFolder(), "a.zip");
    writeFileSync(path, "PK\u0003\u0004 and no more");
    expect(await zipContents(path)).toMatch(/./);
  });
});
