import { chmodSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { findBrowser } from "../../../src/build/book/find-browser.ts";

const folder = mkdtempSync(join(tmpdir(), "atlaswright-browser-"));
const program = join(folder, "chromium");
writeFileSync(program, "");
chmodSync(program, 0o755);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the browser of the book", () => {
  it("is the one named, else one on the path", () => {
    expect(findBrowser(program, "").program).toBe(program);
    expect(findBrowser(undefined, ["/nowhere", folder].join(delimiter)).program).toBe(program);
  });
  it("is asked for where it is missing, with the way out", () => {
    expect(() => findBrowser("/nowhere/chromium")).toThrow(/--browser/);
    expect(() => findBrowser(undefined, "/nowhere")).toThrow(/not installed[\s\S]*apt-get install chromium/);
  });
});
