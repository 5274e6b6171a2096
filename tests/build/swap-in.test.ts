import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { healSwap, MARKER, refuseForeignFolder, swapIn } from "../../src/build/swap-in.ts";
import { Mistake } from "../../src/mistake.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const FILES = ["index.html", "about/index.html", "data/latest/squares.csv"];

/** An atlas of a few files, each holding the name of its edition. */
function makeAtlas(folder: string, edition: string): string {
  for (const file of FILES) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), edition);
  }
  return folder;
}

/** The edition of a whole atlas; undefined where there is none, or where files are missing or mixed. */
function editionOf(folder: string): string | undefined {
  const found = FILES.map((file) =>
    existsSync(join(folder, file)) ? readFileSync(join(folder, file), "utf8") : "missing",
  );
  return new Set(found).size === 1 && found[0] !== "missing" ? found[0] : undefined;
}

describe("swapIn", () => {
  it("puts the first atlas in place, making the folders above it, and takes the built one away", () => {
    const folder = makeTemporaryFolder();
    const built = makeAtlas(join(folder, "built"), "first");
    swapIn(built, join(folder, "public/atlas"));
    expect(editionOf(join(folder, "public/atlas"))).toBe("first");
    expect(existsSync(join(folder, "public/atlas", MARKER))).toBe(true);
    expect(existsSync(built)).toBe(false);
  });

  it("replaces all of an older atlas and leaves nothing beside it", () => {
    const folder = makeTemporaryFolder();
    swapIn(makeAtlas(join(folder, "built"), "first"), join(folder, "atlas"));
    writeFileSync(join(folder, "atlas/gone.html"), "a page of the first edition only");
    swapIn(makeAtlas(join(folder, "built"), "second"), join(folder, "atlas"));
    expect(editionOf(join(folder, "atlas"))).toBe("second");
    expect(existsSync(join(folder, "atlas/gone.html"))).toBe(false);
    expect(readdirSync(folder)).toEqual(["atlas"]);
  });

  it("takes an empty folder", () => {
    const folder = makeTemporaryFolder();
    mkdirSync(join(folder, "atlas"));
    swapIn(makeAtlas(join(folder, "built"), "first"), join(folder, "atlas"));
    expect(editionOf(join(folder, "atlas"))).toBe("first");
  });

  it("follows a link to the folder it replaces", () => {
    const folder = makeTemporaryFolder();
    mkdirSync(join(folder, "served"));
    symlinkSync(join(folder, "served"), join(folder, "atlas"), "junction");
    swapIn(makeAtlas(join(folder, "built"), "first"), join(folder, "atlas"));
    expect(editionOf(join(folder, "served"))).toBe("first");
    expect(editionOf(join(folder, "atlas"))).toBe("first");
  });

  it("leaves a folder of someone else's files as it was", () => {
    const folder = makeTemporaryFolder();
    const theirs = makeAtlas(join(folder, "theirs"), "theirs");
    const built = makeAtlas(join(folder, "built"), "first");
    expect(() => swapIn(built, theirs)).toThrow(Mistake);
    expect(editionOf(theirs)).toBe("theirs");
    expect(editionOf(built)).toBe("first");
  });
});

describe("refuseForeignFolder", () => {
  it("says what is wrong and what to do", () => {
    const folder = makeTemporaryFolder();
    const theirs = makeAtlas(join(folder, "theirs"), "theirs");
    expect(() => refuseForeignFolder(theirs)).toThrow(
      `output ${theirs} holds files that atlaswright did not make; name a new or empty folder with --out, or empty this one yourself`,
    );
    expect(() => refuseForeignFolder(join(theirs, "index.html"))).toThrow(/is a file; name a folder with --out$/);
    expect(() => refuseForeignFolder(".")).toThrow(
      /^output \. holds the current folder; name a folder inside it with --out$/,
    );
  });

  it("lets pass what does not exist, is empty, or was made here", () => {
    const folder = makeTemporaryFolder();
    refuseForeignFolder(join(folder, "new"));
    refuseForeignFolder(folder);
    swapIn(makeAtlas(join(folder, "built"), "first"), join(folder, "atlas"));
    refuseForeignFolder(join(folder, "atlas"));
    expect(readdirSync(folder)).toEqual(["atlas"]);
  });
});

/**
 * A module that makes its process kill itself at the nth change to the file system: just before it, or, for copies
 * and removals, when they are half done. With `acrossFileSystems` the first rename answers as between two disks.
 */
function writeKiller(folder: string, nth: number, acrossFileSystems: boolean): string {
  const path = join(folder, "killer.mjs");
  writeFileSync(
    path,
    `import fs from "node:fs";
    import { syncBuiltinESMExports } from "node:module";
    import { join } from "node:path";
    const real = { ...fs };
    let count = 0;
    let refuse = ${acrossFileSystems};
    const die = () => process.kill(process.pid, "SIGKILL");
    function half(name, args) {
      const first = "index.html";
      if (name === "cpSync") { real.mkdirSync(args[1]); real.cpSync(join(args[0], first), join(args[1], first)); }
      if (name === "rmSync") real.rmSync(join(args[0], first), { force: true });
    }
    for (const name of ["renameSync", "writeFileSync", "cpSync", "rmSync", "rmdirSync"]) {
      fs[name] = (...args) => {
        if (count++ === ${nth}) die();
        if (count++ === ${nth}) { half(name, args); die(); }
        if (name === "renameSync" && refuse) {
          refuse = false;
          throw Object.assign(new Error("cross-device link not permitted"), { code: "EXDEV" });
        }
        return real[name](...args);
      };
    }
    syncBuiltinESMExports();`,
  );
  return path;
}

/** Swaps in another process that is killed at the nth change. Gives whether it was killed. */
function swapAndKill(folder: string, nth: number, acrossFileSystems: boolean): boolean {
  const module = pathToFileURL(join(import.meta.dirname, "../../src/build/swap-in.ts")).href;
  const code = `import { swapIn } from ${JSON.stringify(module)}; swapIn("built", "atlas");`;
  const killer = pathToFileURL(writeKiller(folder, nth, acrossFileSystems)).href;
  const result = spawnSync(process.execPath, ["--import", killer, "--input-type=module", "--eval", code], {
    cwd: folder,
  });
  expect(result.signal === "SIGKILL" || result.status === 0, String(result.stderr)).toBe(true);
  return result.signal === "SIGKILL";
}

describe.each([
  { acrossFileSystems: false, changes: 6 },
  { acrossFileSystems: true, changes: 9 },
])("a process killed while it swaps, across file systems: $acrossFileSystems", ({ acrossFileSystems, changes }) => {
  const moments = Array.from({ length: 2 * changes }, (_, nth) => nth);

  it.each(moments)("leaves a whole atlas at moment %i, and the next run heals", (nth) => {
    const folder = makeTemporaryFolder();
    const atlas = join(folder, "atlas");
    swapIn(makeAtlas(join(folder, "built"), "old"), atlas);
    makeAtlas(join(folder, "built"), "new");

    expect(swapAndKill(folder, nth, acrossFileSystems)).toBe(true);
    const standing = [atlas, join(folder, ".atlas.incoming"), join(folder, ".atlas.outgoing")].map(editionOf);
    expect(standing.some((edition) => edition === "old" || edition === "new")).toBe(true);

    healSwap(atlas);
    expect(editionOf(atlas)).toMatch(/^(old|new)$/);
    expect(readdirSync(folder).filter((name) => name.startsWith(".atlas"))).toEqual([]);

    swapIn(makeAtlas(join(folder, "built"), "next"), atlas);
    expect(editionOf(atlas)).toBe("next");
  });

  it("has no further moment", () => {
    const folder = makeTemporaryFolder();
    swapIn(makeAtlas(join(folder, "built"), "old"), join(folder, "atlas"));
    makeAtlas(join(folder, "built"), "new");
    expect(swapAndKill(folder, 2 * changes, acrossFileSystems)).toBe(false);
    expect(editionOf(join(folder, "atlas"))).toBe("new");
  });
});
