import { close, createReadStream, open, read } from "node:fs";
import type { Readable } from "node:stream";
import { RandomAccessReader } from "yauzl";

/** Reads a file for the zip library, which asks for places a broken zip names without looking whether they exist. */
export class BoundedReader extends RandomAccessReader {
  readonly #file: number;
  readonly #size: number;

  /**
   * Reads an open file of a known size.
   *
   * @param file its descriptor; it is closed with the reader
   */
  constructor(file: number, size: number) {
    super();
    this.#file = file;
    this.#size = size;
  }

  /** Reads bytes at a place; an error where they are not all in the file. */
  override read(
    buffer: Buffer,
    offset: number,
    length: number,
    position: number,
    callback: (error: Error | null, bytes?: number) => void,
  ): void {
    if (position + length <= this.#size) read(this.#file, buffer, offset, length, position, callback);
    else setImmediate(() => callback(new Error("it names a place outside the file")));
  }

  /** The bytes from one place up to another. */
  override _readStreamForRange(start: number, end: number): Readable {
    // A stream that is destroyed closes its file whatever autoClose says; other entries are still read from this one.
    const fs = { open, read, close: (_: number, done?: (error: null) => void) => done?.(null) };
    return createReadStream("", { fd: this.#file, autoClose: false, start, end: end - 1, fs });
  }

  /** Closes the file. */
  override close(callback: (error: Error | null) => void): void {
    close(this.#file, callback);
  }
}
