import { expect, it } from "vitest";
import { diskFault } from "../../src/build/disk-faults.ts";
import { EXIT, tellEnding } from "../../src/build/endings.ts";

const withCode = (code: string, message: string, more: object = {}) =>
  Object.assign(new Error(message), { code, ...more });

// What Node 26 and DuckDB 1.5 threw on a full, a read-only and a limited file system of Linux.
it.each([
  [withCode("ENOSPC", "ENOSPC: no space left on device, write"), /^the disk is full: .*\.build/],
  [withCode("EFBIG", "EFBIG: file too large, write"), /^the disk is full: /],
  [
    withCode("ENOSPC", "ENOSPC, No space left on device '/srv/atlas'", { path: "/srv/atlas" }),
    /^the disk is full: \/srv\/atlas could not be written/,
  ],
  [
    new Error('IO Error: Could not write file "/srv/.build/a/b.parquet": No space left on device'),
    /^the disk is full: \/srv\/\.build\/a\/b\.parquet /,
  ],
  [
    new Error(
      "Out of Memory Error: failed to offload data block of size 256.0 KiB (7.1 MiB/7.1 MiB used).\nThis limit was set by the 'max_temp_directory_size' setting.",
    ),
    /^the disk is full: /,
  ],
  [new Error("the pages could not be made", { cause: withCode("ENOSPC", "ENOSPC: write") }), /^the disk is full: /],
  [
    withCode("EACCES", "EACCES: permission denied, mkdir '/srv/.build'", { path: "/srv/.build" }),
    /^\/srv\/\.build may not be read or written; change its permissions/,
  ],
  [
    withCode("EROFS", "EROFS: read-only file system, open '/srv/.build/lock'", { path: "/srv/.build/lock" }),
    /^\/srv\/\.build\/lock may not be read or written/,
  ],
])("%s is the machine's, with a way out", (error, message) => {
  expect(diskFault(error)?.message).toMatch(message);
});

it("is nothing else", () => {
  expect(diskFault(new TypeError("x is undefined"))).toBeUndefined();
  expect(diskFault(withCode("ENOENT", "ENOENT: no such file or directory", { path: "/a" }))).toBeUndefined();
  expect(diskFault("ENOSPC")).toBeUndefined();
});

it("ends the program as a mistake does", () => {
  expect(tellEnding(withCode("ENOSPC", "ENOSPC: no space left on device, write"))).toBe(EXIT.mistake);
});
