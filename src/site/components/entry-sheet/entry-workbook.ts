import type { DataValidation, WriteSheet } from "hucre/xlsx";
import { writeXlsx } from "hucre/xlsx";
import type { SheetContent } from "./entry-sheet.ts";
import { type SheetColumn, sheetColumns } from "./sheet-columns.ts";

/** Rows that the lists reach down to. */
const ROWS = 1000;
const EVIDENCE = ["sight", "photograph", "specimen"];
const DATUM = ["WGS84"];
const FORMATS: Partial<Record<SheetColumn["kind"], string>> = { date: "yyyy-mm-dd", whole: "0" };
/** Longest list that may stand in a rule itself: spreadsheet programs call a workbook with a longer one damaged. */
const LONGEST_LIST = 255;
/** Longest message of a cell that spreadsheet programs show. */
const LONGEST_MESSAGE = 255;

/**
 * The entry sheet as a workbook: records with lists to choose from and a word on each column where it is entered, then a
 * sheet on the columns, one of the names and one about the atlas. No macros; the same content gives the same bytes.
 *
 * @returns bytes of an .xlsx file
 * @example (await entryWorkbook(content)).subarray(0, 2) // "PK"
 */
export async function entryWorkbook(content: SheetContent): Promise<Uint8Array> {
  const made = new Date(`${content.edition.date}T00:00:00Z`);
  return await writeXlsx({
    sheets: [recordsSheet(content), columnsSheet(content), namesSheet(content), aboutSheet(content)],
    properties: { title: content.title, created: made, modified: made },
  });
}

function recordsSheet(content: SheetContent): WriteSheet {
  const columns = sheetColumns(content.castes);
  return {
    name: content.words.sheets.records,
    columns: columns.map(({ term, kind, width }) => {
      const numFmt = FORMATS[kind];
      return { header: term, key: term, width, ...(numFmt === undefined ? {} : { numFmt }) };
    }),
    data: [],
    freezePane: { rows: 1, columns: 1 },
    dataValidations: columns.map((column, index) => validation(column, letterOf(index), content)),
    ...(content.invented === "" ? {} : { headerFooter: { oddHeader: `&L${content.invented.replaceAll("&", "&&")}` } }),
  };
}

/** What a cell may hold, and what is said where it is entered. Only castes and the like are held to their list. */
function validation(column: SheetColumn, letter: string, content: SheetContent): DataValidation {
  const { words, castes, parts, names } = content;
  const said = {
    range: `${letter}2:${letter}${ROWS + 1}`,
    allowBlank: true,
    showInputMessage: true,
    inputTitle: column.term,
    inputMessage: words.holds[column.term].slice(0, LONGEST_MESSAGE),
  };
  const free: DataValidation = { ...said, type: "custom", formula1: "TRUE" };
  const list = (values: readonly string[]): DataValidation =>
    values.length === 0 || values.join(",").length > LONGEST_LIST
      ? free
      : {
          ...said,
          type: "list",
          values: [...values],
          showErrorMessage: true,
          errorStyle: "information",
          errorMessage: words.otherValue,
        };
  switch (column.term) {
    case "scientificName":
      return {
        ...said,
        type: "list",
        formula1: `'${words.sheets.names.replaceAll("'", "''")}'!$A$2:$A$${names.length + 1}`,
        showErrorMessage: true,
        errorStyle: "warning",
        errorMessage: words.otherName,
      };
    case "caste":
      return list(castes);
    case "evidence":
      return list(EVIDENCE);
    case "geodeticDatum":
      return list(DATUM);
    case "partSeen":
      return list(parts);
    default:
      return column.kind === "whole" ? wholeNumber(said, words.whole) : free;
  }
}

function wholeNumber(said: Omit<DataValidation, "type">, message: string): DataValidation {
  const rule = { type: "whole", operator: "greaterThanOrEqual", formula1: "0" } as const;
  return { ...said, ...rule, showErrorMessage: true, errorStyle: "warning", errorMessage: message };
}

function columnsSheet({ castes, words: { sheets, heads, holds } }: SheetContent): WriteSheet {
  return {
    name: sheets.columns,
    columns: [
      { header: heads.column, key: "column", width: 32 },
      { header: heads.needed, key: "needed", width: 10 },
      { header: heads.holds, key: "holds", width: 110 },
    ],
    data: sheetColumns(castes).map(({ term, needed }) => ({
      column: term,
      needed: needed === true ? heads.yes : "",
      holds: holds[term],
    })),
    freezePane: { rows: 1 },
  };
}

function namesSheet({ names, words: { sheets, heads } }: SheetContent): WriteSheet {
  return {
    name: sheets.names,
    columns: [
      { header: heads.write, key: "write", width: 44 },
      { header: heads.called, key: "called", width: 44 },
    ],
    data: names.map(({ write, called }) => ({ write, called })),
    freezePane: { rows: 1 },
  };
}

function aboutSheet({ about, title, words: { sheets } }: SheetContent): WriteSheet {
  return {
    name: sheets.about,
    columns: [{ header: title, key: "line", width: 110 }],
    data: about.map((line) => ({ line })),
  };
}

function letterOf(index: number): string {
  return String.fromCharCode(65 + index);
}
