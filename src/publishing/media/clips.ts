import type { Prepared } from "./prepared.ts";

/** Boxes that hold other boxes. */
const HOLDERS = new Set(["moov", "trak", "mdia", "minf", "stbl", "edts", "dinf", "moof", "traf", "mvex"]);
/** What a clip is played from. Every other box may say of place, maker, device or program, and becomes free space. */
const PLAYED = new Set([
  ..."ftyp styp mdat sidx ssix prft mfra tfra mfro iods mvhd tkhd tref elst mdhd hdlr vmhd smhd nmhd gmhd dref".split(
    " ",
  ),
  ..."stsd stts ctts cslg stsc stsz stz2 stco co64 stss stsh stdp sdtp sbgp sgpd subs saiz saio padb".split(" "),
  ..."mehd trex leva mfhd tfhd tfdt trun".split(" "),
]);
/** Boxes whose first numbers say when it was made. */
const DATED = new Set(["mvhd", "tkhd", "mdhd"]);
/** Tracks that are picture or sound. A camera writes its way and its settings as further tracks. */
const SHOWN = new Set(["vide", "soun"]);
/** Holders lie seven deep at most; what lies deeper was made to harm. */
const DEEPEST = 12;

const REFUSED = { wayOut: "give an MP4 with H.264 that browsers play" };

/** What is found on the way. */
interface Found {
  width: number;
  height: number;
  whole: boolean;
  otherTrack: string;
}

/**
 * A clip as it is, but for what it says of place, maker and time: all boxes it is not played from become free space of
 * the same length, so that no offset moves, names of tracks become blank and dates of making 0.
 *
 * @param ending of the file's name, without the dot
 * @returns one file; or why it cannot be shown
 * @example prepareClip(bytes, "mov") // { found: "is a clip of a kind that not all browsers play (mov)", wayOut: "give an MP4 …" }
 */
export function prepareClip(bytes: Buffer, ending: string): Prepared {
  if (ending !== "mp4") return { found: `is a clip of a kind that not all browsers play (${ending})`, ...REFUSED };
  if (bytes.subarray(4, 8).toString("latin1") !== "ftyp") return { found: "is no MP4", ...REFUSED };
  const own = Buffer.from(bytes);
  const found: Found = { width: 0, height: 0, whole: true, otherTrack: "" };
  walk(own, 0, own.length, found, 0);
  if (!found.whole) return { found: "breaks off or is damaged", wayOut: "save the clip again" };
  if (found.otherTrack !== "")
    return {
      found: `has a track that is neither picture nor sound (${found.otherTrack}), which may tell where it was made`,
      wayOut: "save it with picture and sound alone",
    };
  const { width, height } = found;
  if (width === 0) return { found: "holds no moving picture", ...REFUSED };
  return { files: [{ ending: ".mp4", bytes: own, source: { width, height, type: "video/mp4" } }] };
}

function walk(bytes: Buffer, from: number, to: number, found: Found, depth: number): void {
  let at = from;
  while (at < to) {
    const box = depth > DEEPEST ? undefined : boxAt(bytes, at, to);
    if (box === undefined) {
      found.whole = false;
      return;
    }
    const { type, body, end } = box;
    if (HOLDERS.has(type)) walk(bytes, body, end, found, depth + 1);
    else if (!PLAYED.has(type)) {
      bytes.write("free", at + 4, "latin1");
      bytes.fill(0, body, end);
    } else if (DATED.has(type)) undate(bytes, body, end);
    if (type === "tkhd") takeSize(bytes, end, found);
    if (type === "hdlr") takeHandler(bytes, body, end, found);
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
function takeSize(bytes: Buffer, end: number, found: Found): void {
  const [width, height] = [bytes.readUInt32BE(end - 8) >>> 16, bytes.readUInt32BE(end - 4) >>> 16];
  if (width > found.width) Object.assign(found, { width, height });
}

/** What a track is follows version, flags and a number; after three more stands its name, which cameras fill with their own. */
function takeHandler(bytes: Buffer, body: number, end: number, found: Found): void {
  const kind = bytes.subarray(body + 8, Math.min(body + 12, end)).toString("latin1");
  if (!SHOWN.has(kind)) found.otherTrack ||= kind.replace(/[^\x21-\x7e]/g, "") || "unnamed";
  if (body + 24 < end) bytes.fill(0, body + 24, end);
}
