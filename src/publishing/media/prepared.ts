import type { MediaRow } from "../../scheme/content-tables.ts";
import type { MediaSource } from "../contracts.ts";
import { prepareClip } from "./clips.ts";
import { prepareDrawing } from "./drawings.ts";
import { preparePicture } from "./pictures.ts";

/** A file that is made ready, before it has its place. */
export interface PreparedFile {
  /** What follows the picture's id in its name: "-480.webp". */
  ending: string;
  bytes: Buffer;
  source: Omit<MediaSource, "path" | "bytes">;
}

/** What becomes of a file: files to publish, or why not and what to do. */
export type Prepared = { files: PreparedFile[] } | { found: string; wayOut: string };

/**
 * Makes a picture or clip ready to be published: nothing of it tells where, when or with what it was made.
 *
 * @param bytes of the scheme's file
 * @param row its row in media.csv; the name's ending and the kind decide what is done
 * @returns files, the preferred format first and smaller ones before larger; or why it cannot be shown
 * @example await prepareMedia(bytes, { file: "leg.jpg", kind: "photograph" }) // { files: [{ ending: "-480.webp", … }, …] }
 */
export async function prepareMedia(bytes: Buffer, { file, kind }: Pick<MediaRow, "file" | "kind">): Promise<Prepared> {
  const ending = file.toLowerCase().match(/\.([a-z0-9]+)$/)?.[1] ?? "";
  if (kind === "clip") return prepareClip(bytes, ending);
  if (ending === "svg") return prepareDrawing(bytes);
  return await preparePicture(bytes);
}
