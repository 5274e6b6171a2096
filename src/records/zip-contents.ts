import { openZip } from "./archive/open-zip.ts";
import { entryPath } from "./archive/zip-entry.ts";

/** What a zip's directory says of it. */
export interface ZipContents {
  names: string[];
  /** Bytes of all files together once unpacked. */
  unpackedBytes: number;
}

/**
 * Reads the directory of a zip; nothing is unpacked.
 *
 * @returns what is wrong, in words, where the directory cannot be read
 * @example await zipContents("records/walks.xlsx") // => { names: ["[Content_Types].xml", …], unpackedBytes: 81_204 }
 */
export async function zipContents(path: string): Promise<ZipContents | string> {
  try {
    const { zip, entries } = await openZip(path);
    zip.close();
    return {
      names: entries.map(entryPath),
      unpackedBytes: entries.reduce((sum, { uncompressedSize }) => sum + uncompressedSize, 0),
    };
  } catch (error) {
    return error instanceof Error ? error.message : "unknown fault";
  }
}
