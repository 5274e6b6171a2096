import { spawn } from "node:child_process";
import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { makeScheme } from "../../src/build/make-scheme.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const LAUNCHER = fileURLToPath(new URL("../../src/launch.js", import.meta.url));
const TWO_GRIDS = fileURLToPath(new URL("../golden/two-grids/input/", import.meta.url));
const VERSION = (
  JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8")) as { version: string }
).version;

interface Ended {
  status: number | null;
  stdout: string;
  stderr: string;
}

/** Runs the program in a folder, with stdout and stderr no terminals. */
async function run(folder: string, ...words: string[]): Promise<Ended> {
  const child = spawn(process.execPath, [LAUNCHER, ...words], { cwd: folder });
  const ended: Ended = { status: null, stdout: "", stderr: "" };
  child.stdout.on("data", (text) => (ended.stdout += String(text)));
  child.stderr.on("data", (text) => (ended.stderr += String(text)));
  ended.status = await new Promise((resolve) => child.on("close", resolve));
  return ended;
}

function schemeIn(folder: string): string {
  makeScheme(join(folder, "scheme"));
  return folder;
}

describe("help and version", () => {
  it.each([[["--help"]], [["-h"]], [["help"]]])(
    "prints the commands, the exit codes and examples on stdout: %j",
    async (words) => {
      const { status, stdout, stderr } = await run(makeTemporaryFolder(), ...words);
      expect([status, stderr]).toEqual([0, ""]);
      for (const command of ["build", "check", "serve", "new <folder>", "settings"])
        expect(stdout).toContain(`\n  ${command}`);
      expect(stdout).toMatch(/Exit codes:\n {2}0 .*\n {2}1 .*\n {2}2 .*\n {2}3 /);
      expect(stdout).not.toContain("start");
    },
  );

  it("prints help on one command", async () => {
    const { status, stdout } = await run(makeTemporaryFolder(), "help", "build");
    expect(status).toBe(0);
    for (const option of [
      "--content <folder>",
      "--out <folder>",
      "--base <path>",
      "--memory <size>",
      "--json",
      "--quiet",
    ])
      expect(stdout).toContain(option);
  });

  it("prints the version of package.json", async () => {
    expect(await run(makeTemporaryFolder(), "--version")).toEqual({ status: 0, stdout: `${VERSION}\n`, stderr: "" });
  });
});

describe("a mistake", () => {
  it.each<[string, string[], RegExp]>([
    ["no command", [], /Usage: atlaswright/],
    ["an unknown command", ["biuld"], /unknown command 'biuld'/],
    ["an unknown option", ["build", "--contents", "x"], /unknown option '--contents'/],
    ["an option without its value", ["build", "--out"], /argument missing/],
    [
      "a folder that is not there",
      ["build", "--content", "nowhere"],
      /^atlas\.yaml is not in .*nowhere; name the scheme's folder with --content, or make one with atlaswright new FOLDER\n$/,
    ],
    ["no scheme in the current folder", ["check"], /^atlas\.yaml is not in /],
    [
      "a size that is none",
      ["build", "--content", "scheme", "--memory", "lots"],
      /^--memory is lots; give a size such as 500MB or 2GB\n$/,
    ],
    [
      "a size that is too small",
      ["check", "--content", "scheme", "--memory", "1KB"],
      /^the records do not fit in the memory they may use; give more with --memory\n$/,
    ],
    ["a port that is none", ["serve", "--port", "70000"], /^--port is 70000; give a number from 0 to 65535\n$/],
    ["new in a folder that holds something", ["new", "scheme"], /^scheme is not empty; name a new or empty folder\n$/],
    ["new without a folder", ["new"], /missing required argument 'folder'/],
    [
      "the scheme's own folder as output",
      ["build", "--content", "scheme", "--out", "scheme"],
      /^output .*scheme holds the scheme's folder, which a build would replace; /,
    ],
  ])("exits with 2 and says so on stderr alone: %s", async (_, words, message) => {
    const folder = schemeIn(makeTemporaryFolder());
    const { status, stdout, stderr } = await run(folder, ...words);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(message);
    expect(stderr).not.toMatch(/\n {4}at /);
    expect(readdirSync(folder)).not.toContain("atlas");
  });

  it("in the settings is told with its file and place", async () => {
    const folder = schemeIn(makeTemporaryFolder());
    writeFileSync(join(folder, "scheme/atlas.yaml"), "title: [");
    const { status, stderr } = await run(folder, "check", "--content", "scheme");
    expect(status).toBe(2);
    expect(stderr).toMatch(/^atlas\.yaml:\d+:\d+: /);
  });
});

describe("what should not fail", () => {
  it("exits with 1, asks for a report and shows where it failed", async () => {
    const folder = schemeIn(makeTemporaryFolder());
    writeFileSync(join(folder, ".build"), "a file where a folder should be");
    const { status, stdout, stderr } = await run(folder, "check", "--content", "scheme");
    expect([status, stdout]).toEqual([1, ""]);
    expect(stderr).toMatch(/^Something failed that should not\. Please report it with the lines below\.\nError: /);
    expect(stderr).toMatch(/\n {4}at /);
  });
});

describe("check", () => {
  it("exits with 0 where nothing is held back, results on stdout, progress on stderr", async () => {
    const { status, stdout, stderr } = await run(schemeIn(makeTemporaryFolder()), "check", "--content", "scheme");
    expect(status).toBe(0);
    expect(stdout).toContain("10 records read = 10 used + 0 held + 0 not used");
    expect(stdout).toMatch(/review\/findings\.csv\n$/);
    const lines = stderr.trimEnd().split("\n");
    expect(lines.map((line) => line.split(/ +/)[0])).toEqual(["read", "", "interpret", "review", "measure", ""]);
    expect(lines.at(-1)).toMatch(/an overlap of 0\.5 instead of 0\.9 would add 0 2 km squares \(0 records\)/);
  });

  it("exits with 3 where records are held back, and writes every finding beside the scheme", async () => {
    const folder = makeTemporaryFolder();
    mkdirSync(join(folder, "scheme"));
    cpSync(TWO_GRIDS, join(folder, "scheme"), { recursive: true });
    const { status, stdout, stderr } = await run(join(folder, "scheme"), "check", "--json", "--quiet");
    expect([status, stderr]).toEqual([3, ""]);
    const answer = JSON.parse(stdout) as { records: object; findings_file: string };
    expect(answer.records).toEqual({ read: 40, used: 29, held: 1, not_used: 10 });
    const [header, first] = readFileSync(answer.findings_file, "utf8").split("\n");
    expect(header).toBe("severity,check,source,file,row,field,value,message,way_out");
    expect(first).toMatch(/^blocks,impossible_caste,walks,records\/walks\.csv,38,caste,worker,/);
  });
});

describe("build", () => {
  it("prints one JSON object on stdout and no progress when quiet", async () => {
    const folder = schemeIn(makeTemporaryFolder());
    const { status, stdout, stderr } = await run(
      folder,
      "build",
      "--content",
      "scheme",
      "--out",
      "out",
      "--json",
      "--quiet",
    );
    expect([status, stderr]).toEqual([0, ""]);
    const answer = JSON.parse(stdout) as { title: string; out: string };
    expect(answer).toMatchObject({
      title: "An Example Atlas",
      edition: "1",
      records: { read: 10, used: 10 },
      out: join(folder, "out"),
    });
    expect(readdirSync(join(folder, "out"))).toEqual(
      expect.arrayContaining(["index.html", "data", "map", "species", "squares"]),
    );
    expect(readdirSync(folder).sort()).toEqual([".build", "out", "scheme"]);
  });
});

describe("a reader that has seen enough", () => {
  it("ends the program without a word", async () => {
    const child = spawn(process.execPath, [LAUNCHER, "settings"], { cwd: makeTemporaryFolder() });
    child.stdout.destroy();
    let stderr = "";
    child.stderr.on("data", (text) => (stderr += String(text)));
    await new Promise((resolve) => child.on("close", resolve));
    expect(stderr).toBe("");
  });
});

describe("new", () => {
  it("makes a scheme and says what to do with it", async () => {
    const folder = makeTemporaryFolder();
    const { status, stdout, stderr } = await run(folder, "new", "mine");
    expect([status, stderr]).toEqual([0, ""]);
    expect(stdout).toContain("atlaswright check --content mine");
    expect(readdirSync(join(folder, "mine")).sort()).toEqual([
      ".gitignore",
      "README.md",
      "atlas.yaml",
      "characters.csv",
      "checklist.csv",
      "pages",
      "records",
      "species",
    ]);
    expect(readFileSync(join(folder, "mine/.gitignore"), "utf8")).toMatch(/^review\/$/m);
  });
});
