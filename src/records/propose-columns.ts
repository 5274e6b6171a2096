import type { DateFormat } from "../dates/date-part.ts";
import type { RecordField } from "../scheme/settings.ts";
import type { UnmappedColumn } from "./file-read.ts";
import { fieldsByWords } from "./header-words.ts";
import { statedNumber } from "./stated-number.ts";

/** Tells what single values are, by a scheme's own checklist, grids and rules of dates. */
export interface ValueJudge {
  isName(text: string): boolean;
  isReference(text: string): boolean;
  isDate(text: string, format: DateFormat): boolean;
}

/** A column that looks to hold a field, and why. */
export interface ProposedColumn {
  field: RecordField;
  header: string;
  /** In words: "58 of 60 values are names of the checklist". */
  why: string;
  /** Format the dates are read by, where only one other than ISO 8601 reads them. */
  dateFormat?: DateFormat;
}

const MOST = 0.8;
/** Checklists hold a group; files often hold more. */
const MOST_NAMES = 0.5;

/**
 * Proposes fields for the columns no field was found for, by what stands in them and by the words of their headers. A
 * person decides. A region is never taken for a grid reference: H1 to H40 are vice-counties of Ireland, and H10 to H40
 * squares as well.
 *
 * @param known fields that have a column or a constant
 * @example proposeColumns([{ header: "Art", values: ["Bombus pratorum"] }], new Set(), judge)[0] // => { field: "scientificName", header: "Art", why: "1 of 1 values are names of the checklist" }
 */
export function proposeColumns(
  columns: readonly UnmappedColumn[],
  known: ReadonlySet<RecordField>,
  judge: ValueJudge,
): ProposedColumn[] {
  const candidates = columns.flatMap((column) => candidatesOf(column, judge));
  const proposed: ProposedColumn[] = [];
  const taken = (field: RecordField) => known.has(field) || proposed.some((one) => one.field === field);
  for (const { rank: _, ...candidate } of candidates.toSorted((one, other) => other.rank - one.rank)) {
    const { field, header } = candidate;
    const placed = taken("gridReference") && (field === "decimalLatitude" || field === "decimalLongitude");
    const dated = taken("eventDate") && (field === "year" || field === "month" || field === "day");
    if (taken(field) || placed || dated || proposed.some((one) => one.header === header)) continue;
    proposed.push(candidate);
  }
  const order = columns.map(({ header }) => header);
  return proposed.toSorted((one, other) => order.indexOf(one.header) - order.indexOf(other.header));
}

type Candidate = ProposedColumn & { rank: number };

function candidatesOf(column: UnmappedColumn, judge: ValueJudge): Candidate[] {
  const { header, values } = column;
  const words = fieldsByWords(header);
  const byContent = [nameIn(column, judge), referenceIn(column, words, judge), dateIn(column, words, judge)];
  const candidates = byContent
    .filter((found) => found !== undefined)
    .map((found): Candidate => ({ ...found, header, rank: words.includes(found.field) ? 3 : 2 }));
  for (const field of words) {
    if (candidates.some((found) => found.field === field) || !mayHold(field, values)) continue;
    candidates.push({ field, header, why: "by its header", rank: 1 });
  }
  return candidates;
}

function nameIn({ values }: UnmappedColumn, { isName }: ValueJudge): Found | undefined {
  const names = values.filter((value) => isName(value)).length;
  if (names === 0 || names < values.length * MOST_NAMES) return undefined;
  return { field: "scientificName", why: `${names} of ${values.length} values are names of the checklist` };
}

type Found = Pick<ProposedColumn, "field" | "why" | "dateFormat">;

function referenceIn(
  { header, values }: UnmappedColumn,
  words: readonly RecordField[],
  { isReference }: ValueJudge,
): Found | undefined {
  if (words.includes("viceCounty") || /count(?:y|ies)|region|province|\bv\.? ?c\b/i.test(header)) return undefined;
  const squares = values.filter((value) => /\d/.test(value) && isReference(value));
  if (squares.length === 0 || squares.length < values.length * MOST) return undefined;
  if (squares.every((value) => /^\s*[A-Za-z]\s*\d{1,2}\s*$/.test(value)) && !words.includes("gridReference"))
    return undefined;
  if (squares.every((value) => /^\s*H\s*(?:[1-9]|[1-3]\d|40)\s*$/i.test(value))) return undefined;
  return { field: "gridReference", why: `${squares.length} of ${values.length} values are grid references` };
}

const FORMATS = ["iso", "day-first", "month-first"] as const;

function dateIn({ values }: UnmappedColumn, words: readonly RecordField[], { isDate }: ValueJudge): Found | undefined {
  // A number alone may be a year, a height or a count; only the header tells.
  const dates = values.filter((value) => words.includes("eventDate") || /\d\D+\d/.test(value));
  const reads = FORMATS.map((format) => ({ format, count: dates.filter((value) => isDate(value, format)).length }));
  const best = reads.reduce((one, other) => (other.count > one.count ? other : one));
  if (best.count === 0 || best.count < values.length * MOST) return undefined;
  const why = `${best.count} of ${values.length} values are dates`;
  const alone = reads.filter(({ count }) => count === best.count).length === 1;
  if (best.format === "iso") return { field: "eventDate", why };
  if (!alone) return { field: "eventDate", why: `${why}, day first or month first: say which in date_format` };
  return { field: "eventDate", why, dateFormat: best.format };
}

/** False where a column's values cannot be what its header says. */
function mayHold(field: RecordField, values: readonly string[]): boolean {
  const numbers = (least: number, most: number) =>
    values.every((value) => {
      const number = statedNumber(value);
      return typeof number === "number" && number >= least && number <= most;
    });
  switch (field) {
    case "decimalLatitude":
      return numbers(-90, 90);
    case "decimalLongitude":
      return numbers(-180, 180);
    case "year":
      return numbers(1000, 2999);
    case "month":
      return values.every((value) => /^(?:\p{L}+|\d{1,2})$/u.test(value));
    case "day":
      return numbers(1, 31);
    case "scientificName":
      return values.every((value) => /\p{L}/u.test(value));
    case "eventDate":
    case "gridReference":
      return values.length === 0;
    default:
      return true;
  }
}
