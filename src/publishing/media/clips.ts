import type { Prepared } from "./prepared.ts";

/** Boxes that hold nothing of the picture: place, maker, device, notes of editing programs. */
const BLANKED = new Set(["udta", "meta", "uuid", "XMP_", "loci"]);
/** Boxes that hold other boxes. */
const HOLDERS = new Set(["moov", "trak", "mdia", "minf", "stbl", "edts", "dinf", "moof", "traf", "mvex"]);
/** Boxes whose first numbers say when it was made. */
const DATED = new Set(["mvhd", "tkhd", "mdhd"]);

const REFUSED = { wayOut: "give an MP4 with H.264 that browsers play" };

/**
 * A clip as it is, but for what it says of place, maker and time: those boxes become free space of the same length, so
 * that no offset moves, and dates of making become 0.
 *
 * @param ending of the file's name, without the dot
 * @returns one file; or why it cannot be shown
 * @example prepareClip(bytes, "mov") // { found: "is a clip of a kind that not all browsers play (mov)", wayOut: "give an MP4 …" }
 */
export function prepareClip(bytes: Buffer, ending: string): Prepared {
  if (ending !== "mp4") return { found: `is a clip of a kind that not all browsers play (${ending})`, ...REFUSED };
  if (bytes.subarray(4, 8).toString("latin1") !== "ftyp") return { found: "is no MP4", ...REFUSED };
  const own = Buffer.from(bytes);
  const size = { width: 0, height: 0, whole: true };
  walk(own, 0, own.length, size);
  if (!size.whole) return { found: "breaks off or is damaged", wayOut: "save the clip again" };
  if (size.width === 0) return { found: "holds no moving picture", ...REFUSED };
  const { width, height } = size;
  return { files: [{ ending: ".mp4", bytes: own, source: { width, height, type: "video/mp4" } }] };
}

function walk(bytes: Buffer, from: number, to: number, size: { width: number; height: number; whole: boolean }): void {
  let at = from;
  while (at < to) {
    const box = boxAt(bytes, at, to);
    if (box === undefined) {
      size.whole = false;
      return;
    }
    const { type, body, end } = box;
    if (BLANKED.has(type)) {
      bytes.write("free", at + 4, "latin1");
      bytes.fill(0, body, end);
    } else if (HOLDERS.has(type)) walk(bytes, body, end, size);
    else if (DATED.has(type)) undate(bytes, body, end);
    if (type === "tkhd") takeSize(bytes, end, size);
    at = end;
  }
}

function boxAt(bytes: Buffer, at: number, to: number): { type: string; body: number; end: number } | undefined {
  if (at + 8 > to) return undefined;
  const short = bytes.readUInt32BE(at);
  if (short === 1 && at + 16 > to) return undefined;
  const [length, head] = short === 1 ? [Number(bytes.readBigUInt64BE(at + 8)), 16] : [short === 0 ? to - at : short, 8];
  const end = at + length;
  return length < head || end > to
    ? undefined
    : { type: bytes.subarray(at + 4, at + 8).toString("latin1"), body: at + head, end };
}

/** Creation and modification follow version and flags: 4 bytes each, in version 1 eight. */
function undate(bytes: Buffer, body: number, end: number): void {
  const length = bytes[body] === 1 ? 16 : 8;
  if (body + 4 + length <= end) bytes.fill(0, body + 4, body + 4 + length);
}

/** Width and height end the header of a track, in 16.16 fixed point; those of sound are 0. */
function takeSize(bytes: Buffer, end: number, size: { width: number; height: number }): void {
  const [width, height] = [bytes.readUInt32BE(end - 8) >>> 16, bytes.readUInt32BE(end - 4) >>> 16];
  if (width > size.width) Object.assign(size, { width, height });
}
