import { createReadStream } from "node:fs";
import sax from "sax";

/** A cell whose value holds for all the cells under it, down to a row. Rows and columns count from 1. */
export interface MergedDown {
  row: number;
  lastRow: number;
  column: number;
}

/** What reading rows alone does not tell of a sheet. */
export interface SheetMarks {
  /** Cells, such as "C7", that hold a formula without the value it had when the file was saved. */
  withoutValue: string[];
  mergedDown: MergedDown[];
}

const MOST_CELLS = 1000;

/**
 * Looks through the XML of a sheet for formulas without a value and for cells merged over rows (ECMA-376 part 1, 18.3.1.4
 * and 18.3.1.55). Most sheets have neither, which a look at the bytes tells.
 *
 * @param path of the sheet's XML
 * @returns of formulas the first thousand
 * @throws {Error} where the sheet has no end
 */
export async function sheetMarks(path: string): Promise<SheetMarks> {
  const marks: SheetMarks = { withoutValue: [], mergedDown: [] };
  if (!(await holdsMarks(path))) return marks;
  const reader = sax.parser(false, { lowercase: true, xmlns: false });
  const cell = { name: "", formula: false, value: false };
  reader.onopentag = ({ name, attributes }) => {
    const local = name.replace(/^.*:/, "");
    const attribute = (key: string) => String(attributes[key] ?? "");
    if (local === "c") Object.assign(cell, { name: attribute("r"), formula: false, value: false });
    else if (local === "f") cell.formula = true;
    else if (local === "mergecell") marks.mergedDown.push(...mergedDown(attribute("ref")));
  };
  reader.ontext = (text) => {
    if (text !== "") cell.value ||= inValue(reader.tag);
  };
  reader.onclosetag = (name) => {
    if (name.replace(/^.*:/, "") !== "c") return;
    if (cell.formula && !cell.value && marks.withoutValue.length < MOST_CELLS) marks.withoutValue.push(cell.name);
    cell.formula = false;
  };
  const decoder = new TextDecoder();
  for await (const piece of createReadStream(path, { highWaterMark: 1 << 20 }))
    reader.write(decoder.decode(piece as Buffer, { stream: true }));
  reader.write(decoder.decode()).close();
  return marks;
}

function inValue(tag: { name: string } | null | undefined): boolean {
  return /^(?:.*:)?[vt]$/.test(tag?.name ?? "");
}

/** Whether there is anything to look for; and whether the sheet is there to its end, which the library does not ask. */
async function holdsMarks(path: string): Promise<boolean> {
  let holds = false;
  let before = "";
  for await (const piece of createReadStream(path, { highWaterMark: 1 << 20, encoding: "latin1" })) {
    const text = before + (piece as string);
    holds ||= /<(?:\w+:)?(?:f[\s/>]|mergeCell\s)/.test(text);
    before = text.slice(-200);
  }
  if (!/<\/(?:\w+:)?worksheet\s*>\s*(?:<!--.*-->\s*)?$/s.test(before)) throw new Error("a sheet ends in the middle");
  return holds;
}

/** The reference of a merged range as a cell merged over rows; none where it is over columns only. */
function mergedDown(reference: string): MergedDown[] {
  const found = /^([A-Z]{1,3})(\d{1,7}):[A-Z]{1,3}(\d{1,7})$/.exec(reference);
  if (found === null) return [];
  const [row, lastRow] = [Number(found[2]), Number(found[3])];
  return lastRow > row ? [{ row, lastRow, column: columnNumber(found[1] ?? "") }] : [];
}

/**
 * The number of a column from its letters.
 *
 * @example columnNumber("AA") // => 27
 */
export function columnNumber(letters: string): number {
  return [...letters].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0);
}
