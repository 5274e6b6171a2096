import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { preparePicture, widthsFor } from "../../../src/publishing/media/pictures.ts";
import type { Prepared } from "../../../src/publishing/media/prepared.ts";

/** What a camera writes of a place nobody should learn, and of its owner; each is looked for in every byte that is published. */
const SECRET = {
  IFD0: { Artist: "Nobody Invented", Copyright: "SECRETRIGHTS", Model: "SECRETCAMERA" },
  IFD3: {
    GPSLatitudeRef: "N",
    GPSLatitude: "51/1 30/1 1234/100",
    GPSLongitudeRef: "W",
    GPSLongitude: "1/1 15/1 5678/100",
  },
};
const TRACES = [
  "Exif",
  "Nobody Invented",
  "SECRETRIGHTS",
  "SECRETCAMERA",
  "ns.adobe.com/xap",
  "Photoshop 3.0",
  "SECRETXMP",
  "http://ns",
];

async function photograph(width: number, height: number, orientation = 1): Promise<Buffer> {
  const red = { create: { width, height, channels: 3 as const, background: "#d6401a" } };
  return await sharp(red)
    .withExif(SECRET)
    .withXmp(
      '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="SECRETXMP"/></rdf:RDF></x:xmpmeta>',
    )
    .withMetadata({ orientation })
    .jpeg()
    .toBuffer();
}
function filesOf(prepared: Prepared) {
  if ("found" in prepared) throw new Error(prepared.found);
  return prepared.files;
}

describe("preparePicture", () => {
  it("publishes no byte of place, maker or camera", async () => {
    const original = await photograph(1000, 600);
    const before = await sharp(original).metadata();
    expect(before.exif?.includes("Nobody Invented")).toBe(true);
    // The GPS directory of EXIF is tag 0x8825 (CIPA DC-008, table 3); without it the test would prove nothing.
    expect(before.exif?.includes(Buffer.from([0x25, 0x88])) || before.exif?.includes(Buffer.from([0x88, 0x25]))).toBe(
      true,
    );
    for (const { bytes, ending } of filesOf(await preparePicture(original))) {
      for (const trace of TRACES) expect(bytes.includes(trace), `${ending} ${trace}`).toBe(false);
      const { exif, xmp, iptc, icc } = await sharp(bytes).metadata();
      expect([exif, xmp, iptc, icc]).toEqual([undefined, undefined, undefined, undefined]);
    }
  });
  it("turns a picture as its orientation says, before that is forgotten", async () => {
    // Orientation 6: the camera was turned, rows run from the top right (CIPA DC-008).
    const [first] = filesOf(await preparePicture(await photograph(400, 200, 6)));
    expect(first?.source).toEqual({ width: 200, height: 400, type: "image/webp" });
  });
  it("makes each size in two formats, none larger than the original, and the same bytes each time", async () => {
    const bytes = await photograph(1000, 500);
    const files = filesOf(await preparePicture(bytes));
    expect(files.map(({ ending }) => ending)).toEqual([
      "-480.webp",
      "-960.webp",
      "-1000.webp",
      "-480.jpg",
      "-960.jpg",
      "-1000.jpg",
    ]);
    expect(files.map(({ source }) => source.height)).toEqual([240, 480, 500, 240, 480, 500]);
    expect(filesOf(await preparePicture(bytes)).map((file) => file.bytes)).toEqual(files.map((file) => file.bytes));
  });
  it("says what it cannot read", async () => {
    expect(await preparePicture(Buffer.from("no picture"))).toMatchObject({ wayOut: "save it again" });
    expect(await preparePicture((await photograph(50, 50)).subarray(0, 300))).toMatchObject({
      wayOut: "save it again",
    });
    const moving = await sharp({ create: { width: 4, height: 8, channels: 3, background: "#000", pageHeight: 4 } })
      .gif()
      .toBuffer();
    expect("found" in (await preparePicture(moving))).toBe(true);
  });
});

describe("widthsFor", () => {
  it("fills what the picture fills", () => {
    expect([300, 480, 700, 1440, 5000].map(widthsFor)).toEqual([
      [300],
      [480],
      [480, 700],
      [480, 960, 1440],
      [480, 960, 1440],
    ]);
  });
});
