import { type Dirent, readdirSync, realpathSync, statSync } from "node:fs";
import { join, sep } from "node:path";
import { type ArchiveFiles, isLitter } from "./archive-files.ts";
import { type ArchiveRemark, refusedArchive, refusedEntry } from "./archive-remark.ts";

/** A folder with more files than this is no archive. */
const MOST_FILES = 100_000;

/** The files of an archive in a folder. A link is followed only to a file inside the folder, never to a folder. */
export function folderFiles(folder: string): ArchiveFiles | ArchiveRemark {
  const root = realpathSync(folder);
  const paths: string[] = [];
  const remarks: ArchiveRemark[] = [];
  const look = (within: string): boolean => {
    for (const entry of readdirSync(join(root, within), { withFileTypes: true })) {
      const path = within === "" ? entry.name : `${within}/${entry.name}`;
      if (isLitter(path)) continue;
      if (entry.isDirectory()) {
        if (!look(path)) return false;
        continue;
      }
      const refused = refusal(root, path, entry);
      if (refused === undefined) paths.push(path);
      else remarks.push(refusedEntry(path, refused, "put the file itself there"));
      if (paths.length > MOST_FILES) return false;
    }
    return true;
  };
  if (!look(""))
    return refusedArchive(`the folder holds more than ${MOST_FILES} files`, "name the folder of one archive");
  return {
    paths: paths.sort(),
    remarks,
    take: (path) => Promise.resolve(join(root, path)),
    close: () => {},
  };
}

function refusal(root: string, path: string, entry: Dirent): string | undefined {
  if (entry.isFile()) return undefined;
  if (!entry.isSymbolicLink()) return "is no file";
  try {
    const target = realpathSync(join(root, path));
    if (!target.startsWith(root + sep)) return "is a link out of the folder";
    return statSync(target).isFile() ? undefined : "is a link to a folder";
  } catch {
    return "is a link to nothing";
  }
}
