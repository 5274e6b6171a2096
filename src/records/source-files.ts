import { existsSync, readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { Mistake } from "../mistake.ts";
import { contentPath } from "../scheme/content-path.ts";
import type { SourceSetting } from "../scheme/settings.ts";

/** One file of records, or folder that is an archive: its source, its path, and its name inside the scheme's folder. */
export interface SourceFile {
  source: SourceSetting;
  path: string;
  name: string;
}

/**
 * The files of all sources, in the order of the settings and sorted by name within a pattern.
 *
 * @throws {Mistake} where a source names a file that is not there, or a pattern that fits none
 */
export function sourceFiles(folder: string, sources: readonly SourceSetting[]): SourceFile[] {
  const files = sources.flatMap((source) =>
    [source.files].flat().flatMap((pattern) => {
      const names = expand(folder, pattern);
      if (names.length === 0)
        throw new Mistake(
          `source ${source.id}`,
          `names ${pattern}, and no such file is in ${folder}`,
          "correct files, or put the records there",
          { file: "atlas.yaml" },
        );
      return names.map((name) => ({ source, path: contentPath(folder, name) ?? join(folder, name), name }));
    }),
  );
  const twice = files.find(({ name }, index) => files.findIndex((other) => other.name === name) !== index);
  if (twice !== undefined)
    throw new Mistake(`file ${twice.name}`, "belongs to two sources", "name it in one of them only", {
      file: "atlas.yaml",
    });
  return files;
}

function expand(folder: string, pattern: string): string[] {
  if (!pattern.includes("*")) return existsSync(join(folder, pattern)) ? [pattern] : [];
  const within = dirname(pattern);
  const expression = new RegExp(
    `^${pattern
      .slice(within === "." ? 0 : within.length + 1)
      .split("*")
      .map((part) => part.replaceAll(/[.+?^${}()|[\]\\]/g, "\\$&"))
      .join(".*")}$`,
  );
  const place = join(folder, within);
  if (!existsSync(place)) return [];
  return readdirSync(place, { withFileTypes: true })
    .filter((entry) => expression.test(entry.name) && (!entry.isDirectory() || isArchive(join(place, entry.name))))
    .map((entry) => (within === "." ? entry.name : `${within}/${entry.name}`))
    .sort();
}

/** A pattern takes in folders only where they say that they are archives; one that is named is taken at its word. */
function isArchive(folder: string): boolean {
  return existsSync(join(folder, "meta.xml"));
}
