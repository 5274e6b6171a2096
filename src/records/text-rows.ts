import { createReadStream } from "node:fs";
import { rowSplitter, type TextRow } from "./row-splitter.ts";
import type { Encoding } from "./text-file.ts";

const CHUNK = 1 << 20;

/**
 * The rows of a delimited file, some at a time; the file is never held whole.
 *
 * @param width how many cells a row has, as its header tells
 */
export async function* textRows(
  path: string,
  { encoding, delimiter, width }: { encoding: Encoding; delimiter: string; width: number },
): AsyncGenerator<TextRow[]> {
  const decoder = new TextDecoder(encoding);
  const splitter = rowSplitter(delimiter, width);
  for await (const piece of createReadStream(path, { highWaterMark: CHUNK }))
    yield splitter.push(decoder.decode(piece as Buffer, { stream: true }));
  yield splitter.push(decoder.decode());
  yield splitter.end();
}
