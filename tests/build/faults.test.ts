/** What befalls a machine: a disk that fills, a folder that may not be written, a process that is killed. */
import { type SpawnSyncReturns, spawnSync } from "node:child_process";
import { chmodSync, cpSync, mkdirSync, readdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { MARKER } from "../../src/build/swap-in.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const ENTRY = fileURLToPath(new URL("../../src/build/cli.ts", import.meta.url));
const TWO_GRIDS = fileURLToPath(new URL("../golden/two-grids/input/", import.meta.url));

/** A folder with the small scheme in it, and an atlas of an earlier build. */
function workplace(): string {
  const folder = makeTemporaryFolder();
  cpSync(TWO_GRIDS, join(folder, "scheme"), { recursive: true });
  mkdirSync(join(folder, "atlas"));
  for (const name of [MARKER, "index.html"]) writeFileSync(join(folder, "atlas", name), "the last edition");
  return folder;
}

function run(cwd: string, words: readonly string[], more: { uid?: number; before?: readonly string[] } = {}) {
  const { before = [], ...options } = more;
  return spawnSync(process.execPath, [...before, ENTRY, ...words], { cwd, encoding: "utf8", ...options });
}

function expectMistake({ status, stderr }: SpawnSyncReturns<string>, message: RegExp): void {
  expect([stderr.replaceAll("\r", "\n"), status]).toEqual([expect.stringMatching(message), 2]);
  expect(stderr).not.toMatch(/\n {4}at /);
}

const BUILD = ["build", "--content", "scheme", "--out", "atlas", "--quiet"] as const;
const CHECK = ["check", "--content", "scheme", "--json", "--quiet"] as const;

describe("a disk that fills", () => {
  it("ends with 2, the folder and the way out, and the last atlas as it was", () => {
    const folder = workplace();
    // No file may grow beyond 4 kB: what is written further fails as on a full disk, whoever runs the test.
    const limited = `trap "" XFSZ; ulimit -f 4; exec "$0" "$@"`;
    const ended = spawnSync("bash", ["-c", limited, process.execPath, ENTRY, ...BUILD], {
      cwd: folder,
      encoding: "utf8",
    });
    expectMistake(ended, /the disk is full: .*\.build.* could not be written, .*; free some space there/);
    expect(readdirSync(join(folder, "atlas")).sort()).toEqual([MARKER, "index.html"].sort());

    const again = run(folder, CHECK);
    expect([again.status, JSON.parse(again.stdout)]).toMatchObject([3, { records: {} }]);
  });
});

describe("a folder that may not be written", () => {
  it("ends with 2 and names it", () => {
    const folder = workplace();
    chmodSync(folder, 0o555);
    // Who may do everything runs it as nobody.
    const ended = run(folder, CHECK, process.getuid?.() === 0 ? { uid: 65_534 } : {});
    chmodSync(folder, 0o755);
    expectMistake(ended, /\.build\S* may not be read or written; change its permissions/);
  });
});

/** A module that kills its process at the nth renaming, which is what ends each stage: just before it, or just after. */
function killer(folder: string, nth: number, after: boolean): string {
  const path = join(folder, `killer-${nth}-${after}.mjs`);
  writeFileSync(
    path,
    `import fs from "node:fs";
    import { syncBuiltinESMExports } from "node:module";
    const rename = fs.renameSync;
    let count = 0;
    fs.renameSync = (...args) => {
      const isLast = count++ === ${nth};
      if (isLast && ${!after}) process.kill(process.pid, "SIGKILL");
      rename(...args);
      if (isLast) process.kill(process.pid, "SIGKILL");
    };
    syncBuiltinESMExports();`,
  );
  return pathToFileURL(path).href;
}

describe("a process that is killed", () => {
  it("at the end of any stage leaves what the next run takes up, with the same answer", () => {
    const folder = workplace();
    const sound = run(workplace(), CHECK);
    expect(sound.status).toBe(3);
    let killed = 0;
    for (let nth = 0; nth < 12; nth += 1) {
      const ended = run(folder, CHECK, { before: ["--import", killer(folder, nth === 0 ? 0 : 1, nth % 2 === 1)] });
      if (ended.signal !== "SIGKILL") break;
      killed += 1;
    }
    expect(killed).toBeGreaterThan(2);
    const healed = run(folder, CHECK);
    expect(healed.status).toBe(3);
    const answerOf = ({ stdout }: SpawnSyncReturns<string>) => stdout.replaceAll(/"[^"]*(scheme|review)[^"]*"/g, '"…"');
    expect(answerOf(healed)).toBe(answerOf(sound));
    const left = readdirSync(join(folder, ".build"), { recursive: true }).map(String);
    expect(left.filter((name) => /\.begun|lock$/.test(name))).toEqual([]);
  });
});

describe("an output folder", () => {
  it("that holds the scheme, is its review folder or a link to nothing is refused before anything is read", () => {
    const folder = workplace();
    cpSync(join(folder, "scheme"), join(folder, "atlas/scheme"), { recursive: true });
    symlinkSync(join(folder, "nowhere"), join(folder, "link"));
    symlinkSync(join(folder, "scheme"), join(folder, "linked-scheme"));
    const to = (out: string, content = "scheme") =>
      run(folder, ["build", "--content", content, "--out", out, "--quiet"]);
    expectMistake(
      to("atlas", "atlas/scheme"),
      /^output .*atlas holds the scheme's folder, which a build would replace; /,
    );
    expectMistake(to("scheme"), /^output .*scheme holds the scheme's folder, /);
    expectMistake(to("linked-scheme"), /^output .*linked-scheme holds the scheme's folder, /);
    expectMistake(to("scheme/records"), /^output .*records holds files that atlaswright did not make; /);
    expectMistake(to("scheme/review"), /^output .*review is where what is private is kept; /);
    expectMistake(to("link"), /^output .*link is a link to nothing; /);
  });
});
