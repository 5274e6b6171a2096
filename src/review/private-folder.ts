import { type Dirent, lstatSync, mkdirSync, readdirSync } from "node:fs";
import { basename, join } from "node:path";
import { Mistake } from "../mistake.ts";

/**
 * The folder that what is made for the officer goes to, made if need be. Neither it nor anything in it may be a link: a
 * scheme that was made by somebody else could else have files outside it written over.
 *
 * @returns the folder
 * @throws {Mistake} where there is a link
 * @example privateFolder("content/review") // => "content/review"
 */
export function privateFolder(folder: string): string {
  if (lstatSync(folder, { throwIfNoEntry: false })?.isSymbolicLink() === true) throw link(basename(folder));
  mkdirSync(folder, { recursive: true });
  const inside = (within: string): Dirent[] => readdirSync(within, { withFileTypes: true });
  const open = inside(folder);
  for (let entry = open.pop(); entry !== undefined; entry = open.pop()) {
    const path = join(entry.parentPath, entry.name);
    if (entry.isSymbolicLink()) throw link(path);
    if (entry.isDirectory()) open.push(...inside(path));
  }
  return folder;
}

function link(path: string): Mistake {
  return new Mistake(
    path,
    "is a link, and nothing is written through one there",
    "take it away, or put a folder there",
  );
}
