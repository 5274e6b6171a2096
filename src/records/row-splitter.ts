/** One row of a delimited text. */
export interface TextRow {
  /** Row in the file as a spreadsheet shows it: the first is row 1, and blank rows count. */
  row: number;
  /** Cells without their quotation marks. */
  cells: string[];
  /** True where a quotation mark stood where none can, so that the row was taken line by line. */
  broken: boolean;
  /** True where the row was too long to be one, and only its beginning is here. */
  cut?: boolean;
}

/** Takes a text in pieces and gives its rows. */
export interface RowSplitter {
  push(text: string): TextRow[];
  end(): TextRow[];
}

/** A quotation mark that is not closed within this many characters was never meant to open a cell. */
const LONGEST_QUOTED = 1 << 20;
/** A line without an end within this many characters is no row. */
const LONGEST_LINE = 1 << 24;

/** A row's cells, and where the next row begins. */
interface Scan {
  cells: string[];
  end: number;
}

/**
 * Splits delimited text into rows by RFC 4180, and bears what that does not allow: LF, CRLF and CR side by side, and
 * quotation marks that stand anywhere. Where a quotation mark is never closed, or something follows one that closes,
 * the line is taken by itself and the mark as text, so that the rows after it are not swallowed. Blank rows are left
 * out and counted, those of empty cells too.
 *
 * @param delimiter one character; not a quotation mark or a line break
 * @param cellsInRow how many cells a row has; the first row tells where it is not given
 * @example rowSplitter(",").push('a,b\n1,"2\n3"\n') // => [{ row: 1, cells: ["a", "b"], broken: false }, { row: 2, cells: ["1", "2\n3"], broken: false }]
 */
export function rowSplitter(delimiter: string, cellsInRow = 0): RowSplitter {
  let text = "";
  let row = 0;
  let width = cellsInRow;
  /** True while the rest of a line that is no row is passed over. */
  let skipping = false;

  const split = (final: boolean): TextRow[] => {
    const rows: TextRow[] = [];
    const lineEnd = lineEnds(text);
    let from = 0;
    while (from < text.length) {
      const end = lineEnd(from);
      const next = afterBreak(text, end);
      const begun = next === undefined && !final;
      if (skipping || (begun && end - from >= LONGEST_LINE)) {
        if (!skipping) rows.push({ row: ++row, cells: [text.slice(from, from + 200)], broken: true, cut: true });
        skipping = next === undefined;
        from = next ?? end;
        continue;
      }
      if (begun) break;
      const scan = rowAt(text, from, { lineEnd, delimiter, width, final });
      if (scan === "unfinished") break;
      from = scan.end;
      row += 1;
      if (scan.cells.every((cell) => cell.trim() === "")) continue;
      if (width === 0) width = scan.cells.length;
      rows.push({ row, cells: scan.cells, broken: scan.broken });
    }
    text = text.slice(from);
    return rows;
  };

  return {
    push(piece) {
      text += piece;
      return split(false);
    },
    end: () => split(true),
  };
}

/** Where the line that holds a position ends: at its break, or at the end of the text. */
type LineEnd = (from: number) => number;

/** Remembers the next LF and the next CR, so that a text without one of them is searched for it once only. */
function lineEnds(text: string): LineEnd {
  const next = (mark: string) => {
    let from = 0;
    let found = -1;
    return (position: number) => {
      if (position < from || position > found) {
        from = position;
        const at = text.indexOf(mark, position);
        found = at < 0 ? text.length : at;
      }
      return found;
    };
  };
  const feed = next("\n");
  const carriage = next("\r");
  return (position) => Math.min(feed(position), carriage(position));
}

/** The position after the line break at `end`; undefined where there is none, or where it may be half of a CRLF. */
function afterBreak(text: string, end: number): number | undefined {
  if (end >= text.length || (end === text.length - 1 && text[end] === "\r")) return undefined;
  return text[end] === "\r" && text[end + 1] === "\n" ? end + 2 : end + 1;
}

function rowAt(
  text: string,
  from: number,
  { lineEnd, delimiter, width, final }: { lineEnd: LineEnd; delimiter: string; width: number; final: boolean },
): (Scan & { broken: boolean }) | "unfinished" {
  const end = lineEnd(from);
  const next = afterBreak(text, end) ?? text.length;
  const line = text.slice(from, end);
  if (!line.includes('"')) return { cells: line.split(delimiter), end: next, broken: false };
  const scan = scanRow(text, from, { lineEnd, delimiter, final });
  if (scan === "unfinished" && text.length - from < LONGEST_QUOTED) return "unfinished";
  const several =
    typeof scan === "object" &&
    scan.end > next &&
    isSeveralRows(text.slice(from, scan.end), scan.cells.length, width, delimiter);
  return typeof scan === "string" || several
    ? { cells: looseCells(line, delimiter), end: next, broken: true }
    : { ...scan, broken: false };
}

/** Reads one row with quoted cells. Spaces around a quoted cell are let go. */
function scanRow(
  text: string,
  from: number,
  { lineEnd, delimiter, final }: { lineEnd: LineEnd; delimiter: string; final: boolean },
): Scan | "broken" | "unfinished" {
  const cells: string[] = [];
  let at = from;
  let stop = lineEnd(from);
  for (;;) {
    const open = delimiter === " " ? at : skipSpaces(text, at);
    if (text[open] === '"') {
      const close = closingMark(text, open + 1);
      if (close < 0 || close + 1 >= text.length) {
        if (!final) return "unfinished";
        if (close < 0) return "broken";
      }
      cells.push(text.slice(open + 1, close).replaceAll('""', '"'));
      at = delimiter === " " ? close + 1 : skipSpaces(text, close + 1);
      stop = lineEnd(at);
      if (at < stop && text[at] !== delimiter) return "broken";
    } else {
      const length = text.slice(at, stop).indexOf(delimiter);
      const end = length < 0 ? stop : at + length;
      cells.push(text.slice(at, end));
      at = end;
    }
    if (at === stop) break;
    at += 1;
  }
  const next = afterBreak(text, at);
  return next === undefined && !final ? "unfinished" : { cells, end: next ?? text.length };
}

function skipSpaces(text: string, from: number): number {
  let at = from;
  while (text[at] === " ") at += 1;
  return at;
}

/** Where the quotation mark stands that closes a cell; a doubled one is text. −1 where none does. */
function closingMark(text: string, from: number): number {
  let mark = text.indexOf('"', from);
  while (mark >= 0 && text[mark + 1] === '"') mark = text.indexOf('"', mark + 2);
  return mark;
}

/**
 * True where a row over several lines is rather several rows with a stray mark at each end: it has not the cells of a
 * row, and at least half of its lines after the first have.
 */
function isSeveralRows(text: string, cells: number, width: number, delimiter: string): boolean {
  if (cells === width) return false;
  const lines = text
    .split(/\r\n?|\n/)
    .slice(1)
    .filter((line) => line.trim() !== "");
  return (
    lines.filter((line) => looseCells(line, delimiter).length === width).length * 2 >= lines.length && lines.length > 0
  );
}

/** Cells of a single line, with marks that are never closed, or are followed by something, taken as text. */
function looseCells(line: string, delimiter: string): string[] {
  const cells: string[] = [];
  let at = 0;
  for (;;) {
    const open = delimiter === " " ? at : skipSpaces(line, at);
    const close = line[open] === '"' ? closingMark(line, open + 1) : -1;
    const after = close < 0 ? -1 : skipSpaces(line, close + 1);
    if (close >= 0 && (after >= line.length || line[after] === delimiter)) {
      cells.push(line.slice(open + 1, close).replaceAll('""', '"'));
      at = after;
    } else {
      const next = line.indexOf(delimiter, at);
      const end = next < 0 ? line.length : next;
      cells.push(line.slice(at, end).trim().replace(/^"/, "").replace(/"$/, ""));
      at = end;
    }
    if (at >= line.length) return cells;
    at += 1;
  }
}
