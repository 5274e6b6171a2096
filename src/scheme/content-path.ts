import { existsSync, realpathSync } from "node:fs";
import { isAbsolute, join, relative, sep } from "node:path";
import { Mistake } from "../mistake.ts";

/**
 * The path of a file inside a scheme's folder. A file that is reached through a link must lie inside it as well, so
 * that a scheme made by somebody else cannot publish what is not its own.
 *
 * @param folder the scheme's folder
 * @param file path inside it, as the settings write it
 * @returns the path; undefined where there is no such file
 * @throws {Mistake} where the file lies outside the folder
 * @example contentPath("content", "checklist.csv") // => "content/checklist.csv"
 */
export function contentPath(folder: string, file: string): string | undefined {
  const path = join(folder, file);
  if (!existsSync(path)) return undefined;
  const inside = relative(realpathSync(folder), realpathSync(path));
  if (inside === "" || inside === ".." || inside.startsWith(`..${sep}`) || isAbsolute(inside))
    throw new Mistake(file, `leads out of ${folder}`, "copy the file into the scheme's folder", { file: "atlas.yaml" });
  return path;
}
