import { openSync, statSync } from "node:fs";
import { type Entry, fromRandomAccessReaderPromise, type ZipFile } from "yauzl";
import { BoundedReader } from "./bounded-reader.ts";

/** More files than any workbook or archive of records has. */
const MOST_ENTRIES = 100_000;

/** A zip that is open for reading, and its directory. */
export interface OpenZip {
  zip: ZipFile;
  entries: Entry[];
}

/**
 * Opens a zip and reads its directory; nothing is unpacked. Names in it are not judged here.
 *
 * @throws {Error} where the file is no zip, or its directory is damaged or too long
 * @example (await openZip("records/walks.zip")).entries.map(entryPath) // => ["meta.xml", "occurrence.txt"]
 */
export async function openZip(path: string): Promise<OpenZip> {
  const { size } = statSync(path);
  const reader = new BoundedReader(openSync(path, "r"), size);
  const zip = await fromRandomAccessReaderPromise(reader, size, { autoClose: false, decodeStrings: false });
  try {
    return { zip, entries: await readEntries(zip) };
  } catch (error) {
    zip.close();
    throw error;
  }
}

function readEntries(zip: ZipFile): Promise<Entry[]> {
  const entries: Entry[] = [];
  return new Promise((resolve, reject) => {
    zip.on("error", reject);
    zip.on("end", () => resolve(entries));
    zip.on("entry", (entry: Entry) => {
      entries.push(entry);
      if (entries.length > MOST_ENTRIES) reject(new Error(`it holds more than ${MOST_ENTRIES} files`));
      else zip.readEntry();
    });
    zip.readEntry();
  });
}
