/** What holds of every build: the same bytes for the same input, and a whole atlas whenever it is ended. */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { appendFileSync, cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { buildAtlas } from "../../src/build/build-atlas.ts";
import { makeScheme } from "../../src/build/make-scheme.ts";
import { keepLog } from "../support/run-scheme.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const TWO_GRIDS = fileURLToPath(new URL("../golden/two-grids/input/", import.meta.url));
const LAUNCHER = fileURLToPath(new URL("../../src/launch.js", import.meta.url));

/** Every file below a folder by its path there, as a short hash. */
function bytesOf(top: string): Record<string, string> {
  const paths = readdirSync(top, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  return Object.fromEntries(
    paths.map((path) => [
      path.slice(top.length + 1),
      createHash("sha256").update(readFileSync(path)).digest("hex").slice(0, 16),
    ]),
  );
}

describe("the same scheme", () => {
  it("gives the same bytes in another folder, on one thread and on two, and a second build does nothing again", async () => {
    const atlases: Record<string, string>[] = [];
    for (const threads of [1, 2]) {
      const folder = join(makeTemporaryFolder(), `on ${threads} threads`);
      const content = join(folder, "a scheme");
      cpSync(TWO_GRIDS, content, { recursive: true });
      const options = { content, workFolder: join(folder, "work"), out: join(folder, "atlas"), base: "/", threads };
      await buildAtlas({ ...options, progress: keepLog() });
      atlases.push(bytesOf(options.out));
      const log = keepLog();
      await buildAtlas({ ...options, progress: log });
      expect(log.steps).toEqual({
        read: "reused",
        interpret: "reused",
        review: "reused",
        measure: "reused",
        publish: "reused",
        render: "reused",
      });
      expect(log.notes).toEqual([]);
      expect(bytesOf(options.out)).toEqual(atlases.at(-1));
    }
    const [one = {}, two = {}] = atlases;
    expect(Object.keys(one).length).toBeGreaterThan(50);
    expect(two).toEqual(one);

    const edition = Object.entries(one).filter(([path]) => path.startsWith("data/2021.1/"));
    const latest = Object.entries(one).filter(([path]) => path.startsWith("data/latest/"));
    expect(latest.map(([path, hash]) => [path.replace("latest", "2021.1"), hash])).toEqual(edition);
  });
});

/** Moments at which a build ends itself: each stage's result is written but not yet in its place; pages half made; all made but not swapped in. */
const MOMENTS: Readonly<Record<string, string>> = {
  read: `renames(/read.[0-9a-f]+\\.begun$/)`,
  interpret: `renames(/interpreted.[0-9a-f]+\\.begun$/)`,
  measure: `renames(/measured.[0-9a-f]+\\.begun$/)`,
  publish: `renames(/published.[0-9a-f]+\\.begun$/)`,
  "render, half done": `later(/site.[0-9a-f]+\\.begun$/, 400)`,
  "just before the swap": `renames(/whole$/)`,
};

/** A module that makes its process kill itself, as a power cut would, at a moment. */
function writeKiller(folder: string, moment: string): string {
  const path = join(folder, "killer.mjs");
  writeFileSync(
    path,
    `import fs from "node:fs";
    import { syncBuiltinESMExports } from "node:module";
    const die = () => process.kill(process.pid, "SIGKILL");
    const { renameSync, mkdirSync } = fs;
    const renames = (path) => { fs.renameSync = (from, ...rest) => { if (path.test(from)) die(); return renameSync(from, ...rest); }; };
    const later = (path, ms) => { fs.mkdirSync = (made, ...rest) => { if (path.test(made)) setTimeout(die, ms); return mkdirSync(made, ...rest); }; };
    ${moment};
    syncBuiltinESMExports();`,
  );
  return pathToFileURL(path).href;
}

/** Builds ./scheme into ./atlas in a process of its own. */
function build(folder: string, moment?: string) {
  const killer = moment === undefined ? [] : ["--import", writeKiller(folder, moment)];
  return spawnSync(process.execPath, [...killer, LAUNCHER, "build", "--content", "scheme", "--out", "atlas"], {
    cwd: folder,
    encoding: "utf8",
  });
}

describe("a build that is killed", () => {
  it("leaves the last atlas whole at every step, and the next build goes on from there", () => {
    const folder = makeTemporaryFolder();
    makeScheme(join(folder, "scheme"));
    expect(build(folder)).toMatchObject({ status: 0 });
    const old = bytesOf(join(folder, "atlas"));

    appendFileSync(
      join(folder, "scheme/records/example.csv"),
      "invented-11,Exemplum secundum,2024-05-10,SK257437,Recorder One,adult,1,present\n",
    );
    for (const [moment, code] of Object.entries(MOMENTS)) {
      expect([moment, build(folder, code).signal]).toEqual([moment, "SIGKILL"]);
      expect([moment, bytesOf(join(folder, "atlas"))]).toEqual([moment, old]);
      expect(readdirSync(folder).sort()).toEqual([".build", "atlas", "killer.mjs", "scheme"]);
    }

    const next = build(folder);
    expect([next.status, next.stdout]).toEqual([0, expect.stringContaining("11 records read = 11 used")]);
    expect(readFileSync(join(folder, "atlas/data/latest/taxa.csv"), "utf8")).toMatch(/^invented-secundum,.*,5,/m);
    expect(
      readdirSync(join(folder, ".build"), { recursive: true }).filter((path) => String(path).endsWith(".begun")),
    ).toEqual([]);
  });

  it("leaves the last atlas whole when the scheme no longer holds", () => {
    const folder = makeTemporaryFolder();
    makeScheme(join(folder, "scheme"));
    mkdirSync(join(folder, "atlas"));
    writeFileSync(join(folder, "atlas/.atlaswright"), "");
    writeFileSync(join(folder, "atlas/index.html"), "last");
    appendFileSync(join(folder, "scheme/atlas.yaml"), "\nno_such_setting: 1\n");
    const { status, stdout, stderr } = build(folder);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain("no_such_setting");
    expect(readFileSync(join(folder, "atlas/index.html"), "utf8")).toBe("last");
  });
});
