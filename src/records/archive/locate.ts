import type { ArchiveFiles } from "./archive-files.ts";
import type { ArchiveRemark } from "./archive-remark.ts";

/**
 * Finds the file of a table in its archive.
 *
 * @param location as the description states it, relative to itself
 * @param within folder of the description in the archive; empty for the archive's own
 * @returns its path in the archive; a remark where it is not there, or is an address on the network
 * @example locate({ paths: ["a/occurrence.txt"] }, "./occurrence.txt", "a") // => "a/occurrence.txt"
 */
export function locate(
  { paths }: Pick<ArchiveFiles, "paths">,
  location: string,
  within: string,
): string | ArchiveRemark {
  if (/^[a-z][a-z0-9+.-]+:\/\//i.test(location))
    return missing(location, "is an address on the network, and nothing is fetched", "put the file into the archive");
  const parts: string[] = within === "" ? [] : within.split("/");
  if (/^[\\/]|^[a-z]:/i.test(location)) return missing(location, "is an absolute path, and was left alone");
  for (const part of location.split(/[\\/]/)) {
    if (part === "" || part === ".") continue;
    if (part !== "..") parts.push(part);
    else if (parts.pop() === undefined) return missing(location, "is a path out of the archive, and was left alone");
  }
  const path = parts.join("/");
  if (paths.includes(path)) return path;
  const alike = paths.filter((other) => other.toLowerCase() === path.toLowerCase());
  return alike.length === 1 && alike[0] !== undefined ? alike[0] : missing(location, "is not in the archive");
}

function missing(value: string, message: string, wayOut = "pack the archive anew with all its files"): ArchiveRemark {
  return { check: "archive_file_missing", severity: "blocks", value, message: `the table’s file ${message}`, wayOut };
}

/** The path of a file beside another in an archive is relative to this folder. */
export function folderOf(path: string): string {
  return path.split("/").slice(0, -1).join("/");
}

/**
 * The archive's description: the meta.xml that lies least deep.
 *
 * @example descriptionAmong(["old/b/meta.xml", "a/meta.xml", "a/occurrence.txt"]) // => "a/meta.xml"
 */
export function descriptionAmong(paths: readonly string[]): string | undefined {
  const depth = (path: string) => path.split("/").length;
  return paths
    .filter((path) => /(^|\/)meta\.xml$/i.test(path))
    .sort((a, b) => depth(a) - depth(b) || (a < b ? -1 : 1))[0];
}
