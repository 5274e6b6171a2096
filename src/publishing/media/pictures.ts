import type { Prepared, PreparedFile } from "./prepared.ts";

/** Widths in pixels that are made of a picture, where it is as wide. */
export const WIDTHS = [480, 960, 1440] as const;
/** Quality that leaves hairs sharp. */
const QUALITY = { webp: 74, jpeg: 78 } as const;
/** A picture of more pixels is no photograph but an attack on memory. */
const MOST_PIXELS = 120_000_000;

/**
 * A photograph or painted drawing in the sizes and formats of the site. It is turned as its orientation says and then
 * written anew from its pixels in sRGB: EXIF, XMP, IPTC and whatever else stood beside them stay behind.
 *
 * @returns webp and then JPEG, each from the smallest width; never wider than the original
 * @example (await preparePicture(bytes)).files.map(({ ending }) => ending) // ["-480.webp", "-960.webp", "-480.jpg", "-960.jpg"]
 */
export async function preparePicture(bytes: Buffer): Promise<Prepared> {
  // Loaded here: most runs take pictures from an earlier build.
  const { default: sharp } = await import("sharp");
  try {
    const upright = sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: "error" }).autoOrient();
    const { autoOrient, format, pages } = await upright.metadata();
    if ((pages ?? 1) > 1) return { found: "moves", wayOut: "give a picture, or a clip in MP4" };
    if (!["jpeg", "png", "webp", "tiff", "heif"].includes(format))
      return { found: `is ${format}`, wayOut: "give a JPEG, PNG, WebP, AVIF or TIFF, or an SVG drawing" };
    const widths = widthsFor(autoOrient.width);
    const files: PreparedFile[] = [];
    for (const kind of ["webp", "jpeg"] as const)
      for (const width of widths) {
        const sized = upright.clone().resize({ width, withoutEnlargement: true }).toColourspace("srgb");
        const written =
          kind === "webp"
            ? sized.webp({ quality: QUALITY.webp })
            : sized.flatten({ background: "#fff" }).jpeg({ quality: QUALITY.jpeg, mozjpeg: true });
        const { data, info } = await written.toBuffer({ resolveWithObject: true });
        files.push({
          ending: `-${info.width}.${kind === "webp" ? "webp" : "jpg"}`,
          bytes: data,
          source: { width: info.width, height: info.height, type: `image/${kind}` },
        });
      }
    return { files };
  } catch (error) {
    return { found: `cannot be read (${error instanceof Error ? error.message : "unknown"})`, wayOut: "save it again" };
  }
}

/**
 * Widths that are made of a picture: those it fills, and its own where that lies below the largest.
 *
 * @example widthsFor(1200) // [480, 960, 1200]
 * @example widthsFor(300) // [300]
 */
export function widthsFor(own: number): number[] {
  const filled = WIDTHS.filter((width) => width <= own);
  return own < WIDTHS[2] && !filled.includes(own as 480) ? [...filled, own] : filled;
}
