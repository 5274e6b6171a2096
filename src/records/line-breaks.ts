const LF = 10;
const CR = 13;

/** What the line breaks of a text are like. */
export interface LineBreaks {
  /** The line ending used throughout, quoted cells included, or "mixed". */
  lineEnding: "LF" | "CRLF" | "CR" | "mixed" | "none";
  /** True where an empty line stands at the beginning or between others; at the end it does not count. */
  blankLine: boolean;
}

/**
 * Watches the line breaks of a text that passes in pieces.
 *
 * @example
 * const breaks = watchLineBreaks();
 * breaks.look(Buffer.from("a\r\n\r\nb\r\n"));
 * breaks.found(); // => { lineEnding: "CRLF", blankLine: true }
 */
export function watchLineBreaks(): { look(units: Uint8Array | Uint16Array): void; found(): LineBreaks } {
  const seen = { lf: false, crlf: false, cr: false };
  let returned = false;
  let lineEmpty = true;
  let blankBefore = false;
  let blankLine = false;
  const end = () => {
    if (lineEmpty) blankBefore = true;
    lineEmpty = true;
  };
  const text = () => {
    if (blankBefore) blankLine = true;
    lineEmpty = false;
  };
  const lookClosely = (units: Uint8Array | Uint16Array) => {
    for (const unit of units) {
      if (unit === LF) {
        seen[returned ? "crlf" : "lf"] = true;
        if (!returned) end();
      } else {
        if (returned) seen.cr = true;
        if (unit === CR) end();
        else text();
      }
      returned = unit === CR;
    }
  };
  const looksPlain = (bytes: Uint8Array) =>
    !returned &&
    bytes.length > 0 &&
    !(lineEmpty && bytes[0] === LF) &&
    !bytes.includes(CR) &&
    Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).indexOf("\n\n") < 0;
  return {
    look(units) {
      if (units instanceof Uint16Array || !looksPlain(units)) return lookClosely(units);
      text();
      if (units.includes(LF)) seen.lf = true;
      lineEmpty = units.at(-1) === LF;
    },
    found() {
      const kinds = { LF: seen.lf, CRLF: seen.crlf, CR: seen.cr || returned };
      const used = (Object.keys(kinds) as (keyof typeof kinds)[]).filter((kind) => kinds[kind]);
      return { lineEnding: used.length > 1 ? "mixed" : (used[0] ?? "none"), blankLine };
    },
  };
}
