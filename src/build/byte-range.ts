/** A stretch of a file: offsets of its first and last byte, both inclusive, from 0. */
export interface ByteRange {
  start: number;
  end: number;
}

/**
 * Reads a request's Range header for one stretch of bytes, by RFC 9110 §14.1.2.
 *
 * @param header the header's value; undefined where the request has none
 * @param size bytes in the file
 * @returns the stretch, cut to the file's end; "whole" where the whole file is to be sent: no header, another unit,
 *   several stretches, or a header that is no range at all; "unsatisfiable" where it lies outside the file
 * @example parseByteRange("bytes=0-499", 1000) // { start: 0, end: 499 }
 * @example parseByteRange("bytes=-200", 1000) // { start: 800, end: 999 }
 */
export function parseByteRange(header: string | undefined, size: number): ByteRange | "whole" | "unsatisfiable" {
  const match = /^bytes=\s*(\d*)-(\d*)\s*$/i.exec(header ?? "");
  if (match === null) return "whole";
  const [first, last] = [match[1] ?? "", match[2] ?? ""];
  if (first === "") {
    if (last === "") return "whole";
    const length = Math.min(Number(last), size);
    return length === 0 ? "unsatisfiable" : { start: size - length, end: size - 1 };
  }
  const start = Number(first);
  const end = last === "" ? size - 1 : Math.min(Number(last), size - 1);
  if (last !== "" && Number(last) < start) return "whole";
  return start >= size ? "unsatisfiable" : { start, end };
}
