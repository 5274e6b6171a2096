import { existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { findPackageJSON } from "node:module";
import { delimiter, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { inflate } from "@sparticuz/chromium";
import { type Browser, chromium, type LaunchOptions } from "playwright-core";
import type { PrintingBrowser } from "../../src/build/book/find-browser.ts";

/** WebGL without a graphics card, so that maps are drawn the same on every machine. */
const ARGS = ["--use-angle=swiftshader", "--enable-unsafe-swiftshader", "--ignore-gpu-blocklist"];

/** Names of Chromium on a PATH. */
const PROGRAMS = ["chromium", "chromium-browser"];

/** Unpacked browsers are kept here, one folder a version. */
const CACHE = fileURLToPath(new URL("../../.build/", import.meta.url));

/**
 * Starts a headless browser: one installed on this machine, else the one packed in the development dependencies
 * (Linux on x64 only), which brings the libraries and fonts that a bare system lacks.
 *
 * @returns a browser; the caller closes it
 * @throws Error that names every attempt and its reason, when none starts
 */
export async function launchBrowser(): Promise<Browser> {
  const attempts: [string, () => Promise<LaunchOptions> | LaunchOptions][] = [
    ...findOnPath().map((path): [string, () => LaunchOptions] => [path, () => ({ executablePath: path })]),
    ["an installed Chrome", () => ({ channel: "chrome" })],
    ["the packed Chromium", packedBrowser],
  ];
  const reasons: string[] = [];
  for (const [name, options] of attempts) {
    try {
      return await chromium.launch({ args: ARGS, ...(await options()) });
    } catch (error) {
      reasons.push(`${name}: ${String(error).split("\n")[0]}`);
    }
  }
  throw new Error(`no browser starts, install Chromium\n  ${reasons.join("\n  ")}`);
}

function findOnPath(): string[] {
  const folders = (process.env["PATH"] ?? "").split(delimiter).filter(Boolean);
  return PROGRAMS.flatMap((program) => folders.map((folder) => join(folder, program))).filter((path) =>
    existsSync(path),
  );
}

/** How to start the packed browser, unpacked once; also used alone by its test. */
export async function packedBrowser(): Promise<LaunchOptions> {
  const folder = await unpackOnce();
  return {
    executablePath: join(folder, "chromium"),
    env: {
      ...process.env,
      LD_LIBRARY_PATH: [join(folder, "al2023/lib"), process.env["LD_LIBRARY_PATH"]].filter(Boolean).join(":"),
      FONTCONFIG_FILE: join(folder, "fonts.conf"),
    },
  };
}

/** Test files run at the same time: each unpacks into a folder of its own, the first to finish gives it its name. */
async function unpackOnce(): Promise<string> {
  const manifest = findPackageJSON("@sparticuz/chromium", import.meta.url);
  if (manifest === undefined) throw new Error("@sparticuz/chromium is not installed");
  const { version } = JSON.parse(readFileSync(manifest, "utf8")) as { version: string };
  const folder = join(CACHE, `browser-${version}`);
  if (existsSync(folder)) return folder;
  mkdirSync(CACHE, { recursive: true });
  const own = mkdtempSync(join(CACHE, "browser-unpacking-"));
  await unpackInto(own, join(dirname(manifest), "bin"));
  writeFileSync(
    join(own, "fonts.conf"),
    `<?xml version="1.0"?><fontconfig><dir>${folder}/fonts</dir><dir>/usr/share/fonts</dir><cachedir>${folder}/fontcache</cachedir></fontconfig>\n`,
  );
  try {
    renameSync(own, folder);
  } catch (error) {
    rmSync(own, { recursive: true, force: true });
    if (!existsSync(folder)) throw error;
  }
  return folder;
}

async function unpackInto(folder: string, archives: string): Promise<void> {
  const before = process.env["TMPDIR"];
  process.env["TMPDIR"] = folder;
  try {
    for (const name of ["chromium.br", "fonts.tar.br", "swiftshader.tar.br", "al2023.tar.br"]) {
      await inflate(join(archives, name));
    }
  } finally {
    if (before === undefined) delete process.env["TMPDIR"];
    else process.env["TMPDIR"] = before;
  }
}

/** A program that prints, for code that starts the browser itself: an installed Chromium, else the packed one. */
export async function printingBrowser(): Promise<PrintingBrowser> {
  const [installed] = findOnPath();
  if (installed !== undefined) return { program: installed };
  const { executablePath, env } = await packedBrowser();
  const environment = Object.fromEntries(
    Object.entries(env ?? {}).flatMap(([name, value]) => (value === undefined ? [] : [[name, String(value)]])),
  );
  return { program: executablePath ?? "chromium", environment };
}
