import { type SheetColumn, sheetColumns } from "./sheet-columns.ts";

/** What an entry sheet is made for: the scheme's names and castes, and the words of one language. */
export interface SheetContent {
  readonly title: string;
  /** Notice of a demonstration; empty for a real scheme. */
  readonly invented: string;
  readonly edition: { readonly id: string; readonly date: string };
  /** Names to choose from, with what each is also called. */
  readonly names: readonly { readonly write: string; readonly called: string }[];
  /** Ids of castes, which records are read by. */
  readonly castes: readonly string[];
  /** Ids of parts of the body that decide. */
  readonly parts: readonly string[];
  /** Lines of the sheet about the atlas. */
  readonly about: readonly string[];
  readonly words: SheetWords;
}

/** Words of a sheet, in one language. */
export interface SheetWords {
  readonly sheets: {
    readonly records: string;
    readonly columns: string;
    readonly names: string;
    readonly about: string;
  };
  readonly heads: {
    readonly column: string;
    readonly holds: string;
    readonly needed: string;
    readonly yes: string;
    readonly write: string;
    readonly called: string;
  };
  /** What stands in each column, by its head. */
  readonly holds: Readonly<Record<SheetColumn["term"], string>>;
  readonly otherName: string;
  readonly otherValue: string;
  readonly whole: string;
}

/** Signs that keep a spreadsheet from reading the letters of another language wrongly. */
const BYTE_ORDER_MARK = "\uFEFF";

/**
 * The entry sheet as text: one row of heads. Languages that write a decimal comma part cells by a semicolon, since
 * spreadsheets of these languages do; both are recognised when it is read.
 *
 * @param language BCP 47 tag
 * @example entrySheetText([], "en") // "\uFEFFscientificName,eventDate,…\r\n"
 */
export function entrySheetText(castes: readonly string[], language: string): string {
  const hasComma = new Intl.NumberFormat(language).format(0.5).includes(",");
  const heads = sheetColumns(castes).map(({ term }) => term);
  return `${BYTE_ORDER_MARK}${heads.join(hasComma ? ";" : ",")}\r\n`;
}
