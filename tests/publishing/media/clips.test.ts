import { describe, expect, it } from "vitest";
import { prepareClip } from "../../../src/publishing/media/clips.ts";

/** A box of ISO/IEC 14496-12: its length, its type, what it holds. */
function box(type: string, ...inside: (Buffer | string)[]): Buffer {
  const body = Buffer.concat(inside.map((part) => (typeof part === "string" ? Buffer.from(part, "latin1") : part)));
  const head = Buffer.alloc(8);
  head.writeUInt32BE(body.length + 8);
  head.write(type, 4, "latin1");
  return Buffer.concat([head, body]);
}
/** A track header of version 0: 80 bytes before width and height, in 16.16 fixed point. */
function trackHeader(width: number, height: number): Buffer {
  const body = Buffer.alloc(84, 7);
  body.writeUInt32BE(0, 0);
  body.writeUInt32BE(width * 65_536, 76);
  body.writeUInt32BE(height * 65_536, 80);
  return box("tkhd", body);
}
/** What a track is: version and flags, a number, the handler, three numbers, the name (ISO/IEC 14496-12, 8.4.3). */
function media(handler: string): Buffer {
  return box("mdia", box("hdlr", Buffer.alloc(8), handler, Buffer.alloc(12), "SECRETCAMERA\0"));
}
function clip(...more: Buffer[]): Buffer {
  const track = box("trak", trackHeader(640, 360), media("vide"), box("udta", "SECRETTRACK"));
  const place = box("udta", box("\u00a9xyz", "+51.5000-001.2500/"), box("meta", "SECRETMETA"));
  const dated = box("mvhd", Buffer.concat([Buffer.alloc(4), Buffer.alloc(8, 0xee), Buffer.alloc(80, 3)]));
  return Buffer.concat([
    box("ftyp", "isom"),
    box("moov", dated, track, place),
    box("uuid", "SECRETXMP"),
    box("mdat", "PICTURES"),
    box("skip", "SECRETOLD"),
    box("gps ", "SECRETPLACE"),
    ...more,
  ]);
}

describe("prepareClip", () => {
  it("blanks place, maker, notes and dates, and moves nothing", () => {
    const original = clip();
    const prepared = prepareClip(original, "mp4");
    if ("found" in prepared) throw new Error(prepared.found);
    const [file] = prepared.files;
    expect(file?.source).toEqual({ width: 640, height: 360, type: "video/mp4" });
    const text = file?.bytes.toString("latin1") ?? "";
    for (const trace of ["SECRET", "+51.5", "\u00a9xyz", "udta", "meta", "uuid", "\u00ee"])
      expect(text).not.toContain(trace);
    expect(text.length).toBe(original.length);
    expect(text.indexOf("PICTURES")).toBe(original.indexOf("PICTURES"));
    expect(original.includes("SECRETMETA")).toBe(true);
  });
  it("refuses a track of the way a camera went, whose places lie among the pictures", () => {
    const way = box("moov", box("trak", trackHeader(640, 360), media("vide")), box("trak", media("meta")));
    expect(prepareClip(Buffer.concat([box("ftyp", "isom"), way]), "mp4")).toMatchObject({
      found: "has a track that is neither picture nor sound (meta), which may tell where it was made",
    });
  });
  it("calls boxes in boxes without end damaged", () => {
    const length = 100_000;
    const nested = Buffer.alloc(length * 8);
    for (let i = 0; i < length; i += 1) {
      nested.writeUInt32BE((length - i) * 8, i * 8);
      nested.write("moov", i * 8 + 4, "latin1");
    }
    expect(prepareClip(Buffer.concat([box("ftyp", "isom"), nested]), "mp4")).toMatchObject({
      found: "breaks off or is damaged",
    });
  });
  it("refuses other clips, damaged ones, and sound alone", () => {
    for (const ending of ["mov", "webm", "avi", ""]) expect(prepareClip(clip(), ending)).toHaveProperty("wayOut");
    expect(prepareClip(Buffer.from("no clip at all"), "mp4")).toMatchObject({ found: "is no MP4" });
    expect(prepareClip(clip().subarray(0, 150), "mp4")).toMatchObject({ found: "breaks off or is damaged" });
    expect(
      prepareClip(Buffer.concat([box("ftyp", "isom"), box("moov", box("trak", trackHeader(0, 0)))]), "mp4"),
    ).toMatchObject({ found: "holds no moving picture" });
  });
  it("reads long lengths, and a last box without one", () => {
    const long = Buffer.alloc(16);
    long.writeUInt32BE(1);
    long.write("free", 4, "latin1");
    long.writeBigUInt64BE(16n, 8);
    const open = box("mdat", "TO THE END");
    open.writeUInt32BE(0);
    expect(prepareClip(clip(long, open), "mp4")).toHaveProperty("files");
  });
});
