import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

/** The folder of package.json. */
export const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/** What the tools write and git ignores. */
const WRITTEN = new Set(["node_modules", "dist", "coverage", ".astro", ".build", ".git", "atlas"]);

/**
 * Every file below a folder, with slashes on every system, sorted; nothing that a tool has written.
 *
 * @param folder relative to the project
 * @returns paths relative to the project
 * @example filesBelow("src/geodesy") // ["src/geodesy/accuracy.ts", …]
 */
export function filesBelow(folder: string): string[] {
  const entries = readdirSync(join(ROOT, folder), { withFileTypes: true });
  return entries
    .filter((entry) => !WRITTEN.has(entry.name))
    .flatMap((entry) => (entry.isDirectory() ? filesBelow(join(folder, entry.name)) : [join(folder, entry.name)]))
    .map((path) => path.split(sep).join("/"))
    .sort();
}

/** The text of a file, by its path relative to the project. */
export function read(path: string): string {
  return readFileSync(join(ROOT, path), "utf8");
}

/**
 * What a source file imports, static, dynamic, types and re-exports alike. Of a component, what its front matter and
 * its scripts import.
 *
 * @param path of a .ts, .js or .astro file, relative to the project
 * @returns relative imports as paths from the project, all others as they are written
 * @example importsOf("src/grids/british.ts") // ["src/grids/grid.ts", …]
 */
export function importsOf(path: string): string[] {
  return resolveImports(path, codeOf(path));
}

/**
 * As `importsOf`, without imports of types, which are gone when the program runs.
 *
 * @example runtimeImportsOf("src/build/work-folder.ts") // ["node:fs", "node:module", "node:path", "node:url"]
 */
export function runtimeImportsOf(path: string): string[] {
  return resolveImports(path, codeOf(path).replace(/^(import|export) type [^;]*;/gm, ""));
}

/** The name of the package an import names: "@duckdb/node-api" of "@duckdb/node-api/lib/x". */
export function packageOf(specifier: string): string {
  return specifier.split("/", specifier.startsWith("@") ? 2 : 1).join("/");
}

function resolveImports(path: string, code: string): string[] {
  const names = ts.preProcessFile(code, true, true).importedFiles.map(({ fileName }) => fileName.replace(/\?.*$/, ""));
  return names.map((name) =>
    name.startsWith(".")
      ? relative(ROOT, join(ROOT, dirname(path), name))
          .split(sep)
          .join("/")
      : name,
  );
}

function codeOf(path: string): string {
  const text = read(path);
  if (!path.endsWith(".astro")) return text;
  const frontMatter = /^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? "";
  const scripts = [...text.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)].map((match) => match[1] ?? "");
  return [frontMatter, ...scripts].join("\n");
}
