import { describe, expect, it } from "vitest";
import { parseByteRange } from "../../src/build/byte-range.ts";

// The examples of RFC 9110 §14.1.2 "Byte Ranges", for a representation of 10,000 bytes.
describe("parseByteRange, RFC 9110 §14.1.2", () => {
  it.each([
    ["the first 500 bytes", "bytes=0-499", { start: 0, end: 499 }],
    ["the second 500 bytes", "bytes=500-999", { start: 500, end: 999 }],
    ["the final 500 bytes", "bytes=-500", { start: 9500, end: 9999 }],
    ["or", "bytes=9500-", { start: 9500, end: 9999 }],
  ])("%s: %s", (_, header, expected) => {
    expect(parseByteRange(header, 10_000)).toEqual(expected);
  });

  it("sends one byte for 0-0", () => {
    expect(parseByteRange("bytes=0-0", 10_000)).toEqual({ start: 0, end: 0 });
  });

  it("cuts a stretch that goes past the end, and takes the whole of a shorter file as its suffix", () => {
    expect(parseByteRange("bytes=9000-20000", 10_000)).toEqual({ start: 9000, end: 9999 });
    expect(parseByteRange("bytes=-20000", 10_000)).toEqual({ start: 0, end: 9999 });
  });

  it("refuses a stretch that begins past the end, and an empty suffix", () => {
    expect(parseByteRange("bytes=10000-", 10_000)).toBe("unsatisfiable");
    expect(parseByteRange("bytes=-0", 10_000)).toBe("unsatisfiable");
    expect(parseByteRange("bytes=0-", 0)).toBe("unsatisfiable");
  });

  it.each([undefined, "", "bytes=-", "bytes=5-2", "bytes=0-1,3-4", "lines=0-1", "bytes=a-b"])(
    "ignores %s",
    (header) => {
      expect(parseByteRange(header, 10_000)).toBe("whole");
    },
  );
});
