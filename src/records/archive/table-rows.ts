import { createReadStream } from "node:fs";
import { type RowSplitter, rowSplitter, type TextRow } from "../row-splitter.ts";
import type { TableShape } from "./table-shape.ts";

const CHUNK = 1 << 20;

/**
 * The rows of a table's file, some at a time. The first line of the file is row 1; lines before the table count, and are
 * left out but for the last, its header. Line breaks in enclosed cells do not count.
 *
 * @param width how many cells a row has; 0 where it is not known yet
 */
export async function* tableRows(
  path: string,
  { shape, width }: { shape: TableShape; width: number },
): AsyncGenerator<TextRow[]> {
  const decoder = new TextDecoder(shape.encoding);
  const before = Math.max(0, shape.headers - 1);
  const skip = lineSkipper(before);
  const splitter = splitterFor(shape, width);
  const counted = (rows: TextRow[]): TextRow[] => {
    for (const row of rows) row.row += before;
    return rows;
  };
  for await (const piece of createReadStream(path, { highWaterMark: CHUNK }))
    yield counted(splitter.push(skip(decoder.decode(piece as Buffer, { stream: true }))));
  yield counted(splitter.push(skip(decoder.decode())));
  yield counted(splitter.end());
}

/** Lets go of the first lines of a text in pieces. */
function lineSkipper(lines: number): (piece: string) => string {
  let left = lines;
  let returned = false;
  return (piece) => {
    let at = 0;
    while (at < piece.length && (left > 0 || returned)) {
      const character = piece[at];
      if (left === 0 && character !== "\n") break;
      if (character === "\r" || (character === "\n" && !returned)) left -= 1;
      returned = character === "\r";
      at += 1;
    }
    if (at < piece.length) returned = false;
    return piece.slice(at);
  };
}

/** Characters that never are text (Unicode 23.7, noncharacters), to stand in for those that mean nothing special here. */
const NO_MARK = "\uFFFE";
const NO_RETURN = "\uFFFF";

/** A splitter for a table's own mark: the common one, with the mark, or what is no mark, exchanged for another. */
function splitterFor({ delimiter, quote, carriageIsText }: TableShape, width: number): RowSplitter {
  const splitter = rowSplitter(delimiter, width);
  if (quote === '"') return splitter;
  const exchange = exchanger(quote === "" ? NO_MARK : quote, '"');
  const hide = (text: string) => (carriageIsText ? text.replaceAll(/\r(?!\n)/g, NO_RETURN) : text);
  const show = (text: string) => (carriageIsText ? text.replaceAll(NO_RETURN, "\r") : text);
  const shown = (rows: TextRow[]): TextRow[] => {
    for (const row of rows) row.cells = row.cells.map((cell) => exchange(show(cell)));
    return rows;
  };
  // The first half of a CRLF waits for the second.
  let held = "";
  return {
    push(piece) {
      const text = held + piece;
      held = text.endsWith("\r") ? "\r" : "";
      return shown(splitter.push(exchange(hide(text.slice(0, text.length - held.length)))));
    },
    end: () => [...shown(splitter.push(held)), ...shown(splitter.end())],
  };
}

function exchanger(one: string, other: string): (text: string) => string {
  return (text) =>
    text
      .split(one)
      .map((part) => part.replaceAll(other, one))
      .join(other);
}
