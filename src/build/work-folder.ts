import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { findPackageJSON } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** src/build and dist/build are both two folders below the package. */
const PACKAGE_ROOT = fileURLToPath(new URL("../../", import.meta.url));

/** Everything the pages import, below src, as TypeScript: Astro compiles it from the copy. */
export const SITE_SOURCES = ["site", "grids", "geodesy", "publishing", "mistake.ts", "build/astro-options.ts"];

/**
 * Lays out a folder in which Astro can build the site: a package of its own, with fresh copies of the sources and
 * links to the packages they import. Astro must write beside the sources, and an installed package may be read-only;
 * and names of styles depend on where the sources lie within the folder it builds in.
 *
 * @param work absolute path, made if missing; its `src` and `node_modules` are replaced, the rest stays
 * @throws Error when a dependency of this package is not installed
 * @example prepareWorkFolder("/home/ann/.build/site-work") // …/src/site is a copy, …/node_modules/astro a link
 */
export function prepareWorkFolder(work: string): void {
  for (const old of ["src", "node_modules"]) rmSync(join(work, old), { recursive: true, force: true });
  mkdirSync(work, { recursive: true });
  // Without it a "type": "commonjs" of the user's own package, further up, would hold for the copied sources.
  writeFileSync(join(work, "package.json"), '{ "type": "module", "private": true }\n');
  for (const source of SITE_SOURCES) copyFresh(join(PACKAGE_ROOT, "src", source), join(work, "src", source));
  for (const name of ownDependencies()) linkPackage(name, join(work, "node_modules", name));
}

function ownDependencies(): string[] {
  const manifest = JSON.parse(readFileSync(join(PACKAGE_ROOT, "package.json"), "utf8")) as {
    dependencies: Record<string, string>;
  };
  return Object.keys(manifest.dependencies);
}

/** One link a package: a package manager may have put each in another folder. */
function linkPackage(name: string, link: string): void {
  const manifest = findPackageJSON(name, import.meta.url);
  if (manifest === undefined || !existsSync(manifest)) throw new Error(`the package ${name} is not installed`);
  mkdirSync(dirname(link), { recursive: true });
  symlinkSync(dirname(manifest), link, "junction");
}

/** By reading and writing: a copy by the system keeps the mode, and a read-only copy could not be replaced. */
function copyFresh(from: string, to: string): void {
  if (statSync(from).isFile()) {
    mkdirSync(dirname(to), { recursive: true });
    writeFileSync(to, readFileSync(from));
    return;
  }
  for (const name of readdirSync(from)) copyFresh(join(from, name), join(to, name));
}
