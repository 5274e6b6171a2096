import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { undoGzip } from "../../src/records/undo-gzip.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

async function undo(bytes: Uint8Array) {
  const folder = makeTemporaryFolder();
  const [packed, target] = [join(folder, "a.gz"), join(folder, "a")];
  writeFileSync(packed, bytes);
  const fault = await undoGzip(packed, target);
  return { fault, text: existsSync(target) ? readFileSync(target, "utf8") : undefined };
}

describe("a gzip file", () => {
  it("is unpacked, all its members in order (RFC 1952, 2.2)", async () => {
    const members = Buffer.concat([gzipSync("a\n"), gzipSync(""), gzipSync("b\n")]);
    expect(await undo(members)).toEqual({ fault: undefined, text: "a\nb\n" });
  });

  it("that is cut off or changed leaves nothing, and says why", async () => {
    const packed = gzipSync("abc".repeat(1000));
    const changed = Buffer.from(packed);
    changed.writeUInt32LE(7, packed.length - 8);
    for (const bytes of [packed.subarray(0, -9), changed]) {
      const { fault, text } = await undo(bytes);
      expect(fault).toMatch(/./);
      expect(text).toBeUndefined();
    }
  });

  // DEFLATE packs a run of one character to a thousandth (RFC 1951, 3.2.5: a length of 258 in a few bits); no text does that.
  it("that is made to fill the disk is left, and leaves nothing", async () => {
    const { fault, text } = await undo(gzipSync(Buffer.alloc(101 * 2 ** 20, "\n")));
    expect(fault).toBe("it unpacks to more than 100 MB, as no table does");
    expect(text).toBeUndefined();
  });

  it("is an error of ours where it cannot be written", async () => {
    const packed = join(makeTemporaryFolder(), "a.gz");
    writeFileSync(packed, gzipSync("a"));
    await expect(undoGzip(packed, join(packed, "nowhere"))).rejects.toThrow(/ENOTDIR/);
  });
});
