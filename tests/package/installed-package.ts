import { spawn, spawnSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { ROOT } from "../project/source-files.ts";

/** What a command gave back. */
export interface Outcome {
  status: number | null;
  stdout: string;
  stderr: string;
}

/** The package as someone else has it: packed, and installed in a project of its own. */
export interface InstalledPackage {
  /** The project it is installed in. */
  folder: string;
  /** Paths in the tarball, relative to the package. */
  packedFiles: string[];
  packedBytes: number;
  /** Runs the program in the project, on the Node of the machine. */
  run(...args: string[]): Outcome;
  /** Starts the program and leaves it running: what it says first, and its exit code once it was told to end. */
  start(...args: string[]): { said: Promise<string>; ended: Promise<number | null>; end(): void };
}

/**
 * Packs this project and installs the tarball in an empty project, from npm's cache where it can.
 *
 * @param folder an empty folder; its project says "type": "commonjs", as most do
 * @returns the installed package; packing and installing take 15 to 30 s
 * @throws Error with npm's own words when either fails
 */
export function installPackage(folder: string): InstalledPackage {
  const project = join(folder, "project");
  mkdirSync(project);
  const [packed] = JSON.parse(npm(ROOT, "pack", "--json", "--pack-destination", folder)) as [
    { filename: string; size: number; files: { path: string }[] },
  ];
  writeFileSync(join(project, "package.json"), '{ "name": "my-project", "version": "1.0.0", "type": "commonjs" }\n');
  npm(
    project,
    "install",
    "--prefer-offline",
    "--no-audit",
    "--no-fund",
    "--loglevel=error",
    join(folder, packed.filename),
  );
  return {
    folder: project,
    packedFiles: packed.files.map(({ path }) => path),
    packedBytes: packed.size,
    run(...args) {
      const program = join(project, "node_modules/.bin/atlaswright");
      const result = spawnSync(program, args, {
        cwd: project,
        env: userEnvironment(),
        encoding: "utf8",
        shell: process.platform === "win32",
      });
      return { status: result.status, stdout: result.stdout, stderr: result.stderr };
    },
    start(...args) {
      const program = join(project, "node_modules/atlaswright/src/launch.js");
      const child = spawn("node", [program, ...args], { cwd: project, env: userEnvironment() });
      return {
        said: new Promise((done) => child.stdout.once("data", (text) => done(String(text).trim()))),
        ended: new Promise((done) => child.on("close", done)),
        end: () => void child.kill("SIGTERM"),
      };
    },
  };
}

function npm(cwd: string, ...args: string[]): string {
  const result = spawnSync("npm", args, {
    cwd,
    env: userEnvironment(),
    encoding: "utf8",
    shell: process.platform === "win32",
  });
  if (result.status !== 0) throw new Error(`npm ${args.join(" ")} fails: ${result.stderr}`);
  return result.stdout;
}

/** The environment without what `npm test` adds: the packed Node before the machine's own, and npm's own variables. */
function userEnvironment(): NodeJS.ProcessEnv {
  const kept = Object.entries(process.env).filter(
    ([name]) =>
      !/^(npm_(package|lifecycle|command|execpath|node_execpath|config_local_prefix)|VITEST|NODE_ENV|NODE_OPTIONS|TEST|DEV|PROD|MODE|SSR|BASE_URL)/.test(
        name,
      ),
  );
  const path = (process.env["PATH"] ?? "").split(delimiter).filter((entry) => !entry.includes("node_modules"));
  return { ...Object.fromEntries(kept), PATH: path.join(delimiter), NO_COLOR: "1" };
}
