import { chmodSync, existsSync, lstatSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { prepareWorkFolder } from "../../src/build/work-folder.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const MISTAKE = new URL("../../src/mistake.ts", import.meta.url);

describe("prepareWorkFolder", () => {
  it("copies the sources and links every package they may import", () => {
    const work = join(makeTemporaryFolder(), "work");
    prepareWorkFolder(work);
    expect(readFileSync(join(work, "src/mistake.ts"), "utf8")).toBe(readFileSync(MISTAKE, "utf8"));
    expect(existsSync(join(work, "src/site/pages/index.astro"))).toBe(true);
    for (const name of ["astro", "zod", "@turf/boolean-point-in-polygon"]) {
      expect(lstatSync(join(work, "node_modules", name)).isSymbolicLink()).toBe(true);
      expect(existsSync(join(work, "node_modules", name, "package.json"))).toBe(true);
    }
  });

  it("makes copies that can be written, replaces them all, and keeps what else is there", () => {
    const work = join(makeTemporaryFolder(), "work");
    prepareWorkFolder(work);
    writeFileSync(join(work, "src/site/left-over.astro"), "");
    writeFileSync(join(work, "kept.txt"), "");
    chmodSync(join(work, "src/mistake.ts"), 0o400);
    prepareWorkFolder(work);
    expect(statSync(join(work, "src/mistake.ts")).mode & 0o200).toBe(0o200);
    expect(existsSync(join(work, "src/site/left-over.astro"))).toBe(false);
    expect(existsSync(join(work, "kept.txt"))).toBe(true);
  });
});
