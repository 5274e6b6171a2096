import { readFileSync, statSync } from "node:fs";
import { readXmlText } from "../archive/parse-xml.ts";
import { zipFiles } from "../archive/zip-files.ts";
import type { TextRow } from "../row-splitter.ts";
import { zipContents } from "../zip-contents.ts";
import { type SheetMarks, sheetMarks } from "./sheet-marks.ts";
import { sheetRows } from "./sheet-rows.ts";
import { type WorkbookSheet, workbookSheets } from "./workbook-sheets.ts";

/** A workbook whose parts are all whole. */
export interface Workbook {
  sheets: WorkbookSheet[];
  /** What reading rows alone does not tell of a sheet. */
  marks(sheet: WorkbookSheet): SheetMarks;
  /** Its rows, some at a time, blank ones left out. */
  rows(sheet: WorkbookSheet): AsyncGenerator<TextRow[]>;
}

const GIGABYTE = 2 ** 30;
const MOST_UNPACKED = 2 * GIGABYTE;
/** The texts of a workbook are held in memory, at some 18 times their size. */
const MOST_SHARED = 128 * 2 ** 20;
const WORKBOOK = "xl/workbook.xml";
const RELATIONSHIPS = "xl/_rels/workbook.xml.rels";
const SHARED = ["xl/sharedStrings.xml", "xl/styles.xml"];

/**
 * Opens a workbook: holds its size against what a workbook can have before anything is unpacked, and every part against
 * its checksum.
 *
 * @param folder where parts are unpacked
 * @returns what is wrong, in words, where it cannot be read
 */
export async function openWorkbook(path: string, folder: string): Promise<Workbook | string> {
  const contents = await zipContents(path);
  if (typeof contents === "string") return contents;
  if (contents.unpackedBytes > MOST_UNPACKED)
    return `it would unpack to ${(contents.unpackedBytes / GIGABYTE).toFixed(1)} GB, more than ${MOST_UNPACKED / GIGABYTE} GB`;
  const files = await zipFiles(path, folder);
  if ("check" in files) return files.message;
  const refused = files.remarks.find(({ value }) => value.startsWith("xl/"));
  if (refused !== undefined) {
    files.close();
    return `${refused.value} ${refused.message}`;
  }
  try {
    const take = async (name: string): Promise<string> => {
      const taken = await files.take(name);
      if (typeof taken !== "string") throw new Error(`${name} ${taken.message}`);
      return taken;
    };
    const [workbook, relationships] = [readXmlText(await take(WORKBOOK)), readXmlText(await take(RELATIONSHIPS))];
    for (const name of SHARED.filter((one) => files.paths.includes(one)))
      if (statSync(await take(name)).size > MOST_SHARED)
        throw new Error(`${name} would unpack to more than ${MOST_SHARED / 2 ** 20} MB`);
    const sheets = workbookSheets(workbook, relationships);
    const marks = new Map<string, SheetMarks>();
    for (const { file } of sheets) marks.set(file, await sheetMarks(await take(file)));
    const bytes = readFileSync(path);
    const marksOf = ({ file }: WorkbookSheet) => marks.get(file) ?? { withoutValue: [], mergedDown: [] };
    return { sheets, marks: marksOf, rows: (sheet) => sheetRows(bytes, sheet.name, marksOf(sheet).mergedDown) };
  } catch (error) {
    return error instanceof Error ? error.message : "unknown fault";
  } finally {
    files.close();
  }
}
