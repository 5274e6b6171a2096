import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { codeHash, hashOf, openStages } from "../../src/build/stages.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

function writeResult(text: string): (folder: string) => Promise<void> {
  return async (folder) => writeFileSync(join(folder, "result"), text);
}

describe("openStages", () => {
  it("makes a result once, and takes it up while the same goes in", async () => {
    const folder = makeTemporaryFolder();
    const first = await openStages(folder).reuse("read", ["a", "b"], writeResult("one"));
    const second = await openStages(folder).reuse("read", ["a", "b"], writeResult("two"));
    const third = await openStages(folder).reuse("read", ["a", "c"], writeResult("three"));
    expect([first.reused, second.reused, third.reused]).toEqual([false, true, false]);
    expect(second).toEqual({ ...first, reused: true });
    expect([second, third].map((one) => readFileSync(join(one.folder, "result"), "utf8"))).toEqual(["one", "three"]);
  });

  it("takes up nothing that was only begun", async () => {
    const folder = makeTemporaryFolder();
    const begin = async (half: string) => {
      writeFileSync(join(half, "result"), "half");
      throw new Error("killed");
    };
    await expect(openStages(folder).reuse("read", ["a"], begin)).rejects.toThrow("killed");
    const { reused, folder: result } = await openStages(folder).reuse("read", ["a"], async (fresh) => {
      expect(readdirSync(fresh)).toEqual([]);
    });
    expect([reused, readdirSync(result)]).toEqual([false, []]);
  });

  it("throws away what a build did not use, of the stages it went through only", async () => {
    const folder = makeTemporaryFolder();
    const old = openStages(folder);
    const read = await old.reuse("read", ["a"], writeResult("a"));
    const site = await old.reuse("site", ["a"], writeResult("a"));
    mkdirSync(join(folder, "read/killed.begun"));
    const stages = openStages(folder);
    const { folder: kept } = await stages.reuse("read", ["b"], writeResult("b"));
    stages.forgetOthers();
    expect([read.folder, site.folder, kept].map((one) => existsSync(one))).toEqual([false, true, true]);
    expect(readdirSync(join(folder, "read")).length).toBe(1);
  });
});

describe("hashOf", () => {
  it("is SHA-256 over the texts with their lengths", () => {
    // printf '1:a2:bc' | sha256sum, GNU coreutils 9.1
    expect(hashOf(["a", "bc"])).toBe("5310a58788781ab25d5ad7c3f85035824b4eb7bdfa394e0ac2186271472b5492");
  });

  it("tells lists apart that are the same when joined", () => {
    const lists = [["ab", "c"], ["a", "bc"], ["abc"], ["abc", ""], ["", "abc"]];
    expect(new Set(lists.map(hashOf)).size).toBe(lists.length);
  });
});

describe("codeHash", () => {
  it("depends on the folders asked for", () => {
    expect(codeHash(["measures"])).toBe(codeHash(["measures"]));
    expect(
      new Set([codeHash([]), codeHash(["measures"]), codeHash(["records"]), codeHash(["measures", "records"])]).size,
    ).toBe(4);
  });
});
