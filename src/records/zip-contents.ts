import { openSync, statSync } from "node:fs";
import { type Entry, fromRandomAccessReaderPromise, type ZipFile } from "yauzl";
import { BoundedReader } from "./archive/bounded-reader.ts";

/** What a zip's directory says of it. */
export interface ZipContents {
  names: string[];
  /** Bytes of all files together once unpacked. */
  unpackedBytes: number;
}

/** More files than any workbook or archive of records has. */
const MOST_ENTRIES = 100_000;

/**
 * Reads the directory of a zip; nothing is unpacked.
 *
 * @returns what is wrong, in words, where the directory cannot be read
 * @example await zipContents("records/walks.xlsx") // => { names: ["[Content_Types].xml", …], unpackedBytes: 81_204 }
 */
export async function zipContents(path: string): Promise<ZipContents | string> {
  let zip: ZipFile | undefined;
  try {
    const { size } = statSync(path);
    zip = await fromRandomAccessReaderPromise(new BoundedReader(openSync(path, "r"), size), size, {
      autoClose: false,
      strictFileNames: false,
    });
    return await contentsOf(zip);
  } catch (error) {
    return error instanceof Error ? error.message : "unknown fault";
  } finally {
    zip?.close();
  }
}

function contentsOf(zip: ZipFile): Promise<ZipContents> {
  const contents: ZipContents = { names: [], unpackedBytes: 0 };
  return new Promise((resolve, reject) => {
    zip.on("error", reject);
    zip.on("end", () => resolve(contents));
    zip.on("entry", (entry: Entry) => {
      contents.names.push(entry.fileName);
      contents.unpackedBytes += entry.uncompressedSize;
      if (contents.names.length > MOST_ENTRIES) reject(new Error(`it holds more than ${MOST_ENTRIES} files`));
      else zip.readEntry();
    });
    zip.readEntry();
  });
}
