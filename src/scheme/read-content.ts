import { readFileSync } from "node:fs";
import { Mistake } from "../mistake.ts";
import { contentPath } from "./content-path.ts";

/**
 * Text of a file of the scheme's folder.
 *
 * @throws {Mistake} where it is not there, lies outside the folder, or is not UTF-8
 * @example readContent("content", "checklist.csv").split(",")[0] // => "taxonID"
 */
export function readContent(folder: string, file: string): string {
  const path = contentPath(folder, file);
  if (path === undefined)
    throw new Mistake(file, `is not in ${folder}`, "add it, or correct its name in atlas.yaml", { file: "atlas.yaml" });
  const bytes = readFileSync(path);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw new Mistake("the file", "is not UTF-8", "save it again as UTF-8", {
      file,
      line: lineOfFault(bytes),
      column: 1,
    });
  }
}

/** The line with the first byte that is no UTF-8. */
function lineOfFault(bytes: Buffer): number {
  const good = new TextDecoder("utf-8").decode(bytes).split("\uFFFD")[0] ?? "";
  return good.split("\n").length;
}
