import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Mistake } from "../mistake.ts";

/** Text of a file of the scheme's folder; a Mistake where it is not there or is not UTF-8. */
export function readContent(folder: string, file: string): string {
  const path = join(folder, file);
  if (!existsSync(path))
    throw new Mistake(file, `is not in ${folder}`, "add it, or correct its name in atlas.yaml", { file: "atlas.yaml" });
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(readFileSync(path));
  } catch {
    throw new Mistake("the file", "is not UTF-8", "save it again as UTF-8", { file });
  }
}
