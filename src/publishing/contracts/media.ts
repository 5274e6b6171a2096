/** Pictures and clips of a taxon, as they are published: made ready in the build, with no trace of place or maker. */
import { z } from "zod";

/** One file a browser may choose: the same picture at one width and in one format. */
export const MediaSource = z.strictObject({
  path: z.string().describe("from the top of the atlas, media/…"),
  width: z.int().positive().describe("pixels; of a drawing, units of its view box"),
  height: z.int().positive(),
  bytes: z.int().positive(),
  type: z.string().describe("media type, such as image/webp"),
});
export type MediaSource = z.infer<typeof MediaSource>;

/** One picture or clip of a taxon. */
export const Media = z.strictObject({
  id: z.string().describe("lower-case ASCII, from the file's name; an anchor on the pages that show it"),
  kind: z.enum(["photograph", "drawing", "clip"]),
  castes: z.array(z.string()).describe("castes it shows; empty where that is not said"),
  form: z.string().describe("age or colour form; empty for the usual one"),
  parts: z.array(z.string()).describe("parts of the body it shows, as characters.csv names them"),
  credit: z.string().describe("as its maker asked to be named"),
  licence: z.strictObject({ id: z.string(), title: z.string(), url: z.string() }),
  alt: z.string().describe("what it shows, for who does not see it"),
  caption: z.string(),
  date: z.string().describe("ISO 8601, or empty"),
  width: z.int().positive().describe("of the largest file; keeps its place on the page"),
  height: z.int().positive(),
  sources: z.array(MediaSource).min(1).describe("preferred format first, and within one smallest first"),
});
export type Media = z.infer<typeof Media>;

/** Everything that is shown of other people's making, and of the scheme's own: `media.json`. */
export const MediaFile = z.strictObject({
  media: z.array(
    Media.extend({ of: z.string().describe("slug of the taxon, in the atlas or outside"), name: z.string() }),
  ),
});
export type MediaFile = z.infer<typeof MediaFile>;
