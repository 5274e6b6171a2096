import { rmSync } from "node:fs";
import Papa from "papaparse";
import { type Database, sqlBeside, sqlText } from "../engine/database.ts";
import type { RecordField, SourceSetting } from "../scheme/settings.ts";
import { mapColumns } from "./column-mapping.ts";
import type { FileFinding } from "./finding.ts";
import { rescueRows } from "./rescue-rows.ts";
import { type Encoding, readBeginning, type TextFacts, writeAsUtf8 } from "./text-file.ts";

/** What reading one file gave. Row numbers count records as a spreadsheet shows them: the header is row 1. */
export interface FileRead {
  fields: RecordField[];
  /** Records the file holds: those read, those rescued and those that could not be. */
  records: number;
  read: number;
  /** Where refused rows stood: after how many rows read, and how many rows they were. */
  gaps: { after: number; rows: number }[];
  rescued: { row: number; cells: Partial<Record<RecordField, string>> }[];
  unreadable: number;
  encoding: Encoding;
  delimiter: string;
  findings: FileFinding[];
}

const STATEMENT = sqlBeside(import.meta.url, "read-delimited.sql");

/**
 * Reads one delimited file into a Parquet file of the record fields, whatever its encoding, line endings and
 * delimiter. Ragged and broken rows are rescued where they can be, else counted and reported; the rest is used.
 *
 * @param path the file
 * @param name its name in findings
 * @param facts what `readTextFacts` found
 * @param target the Parquet file to write, and where a copy in UTF-8 may be kept meanwhile
 */
export async function readDelimited(
  database: Database,
  { path, name, facts, source, target }: { path: string; name: string; facts: TextFacts; source: SourceSetting; target: string },
): Promise<FileRead> {
  const encoding = source.encoding ?? facts.encoding;
  const readable = encoding === "utf-8" && facts.encoding === "utf-8" && facts.lineEnding !== "mixed";
  const copy = `${target}.txt`;
  if (!readable) await writeAsUtf8(path, encoding, copy);
  try {
    const file = readable ? path : copy;
    const beginning = readBeginning(file, "utf-8").replace(/^\uFEFF/, "");
    const delimiter = source.delimiter ?? delimiterOf(beginning);
    const headers = headersOf(beginning, delimiter);
    const mapping = mapColumns(headers, source.columns);
    const fields = [...mapping.columns.keys()];
    const findings = aboutFile(name, { facts, encoding, headers, mapping });
    const empty = { fields, records: 0, read: 0, gaps: [], rescued: [], unreadable: 0, encoding, delimiter, findings };
    if (fields.length === 0) {
      const records = Papa.parse(beginning, { delimiter, skipEmptyLines: true }).data.length - 1;
      const noFields: FileFinding = { file: name, row: 1, field: "", value: headers.join(delimiter).slice(0, 200), check: "no_known_column", severity: "blocks", message: "no column is known, so no row can be used", wayOut: "map the columns in the source's settings" };
      return records > 0 ? { ...empty, records: await countRows(database, file, headers.length, delimiter), unreadable: await countRows(database, file, headers.length, delimiter), findings: [...findings, noFields] } : empty;
    }
    const cells = (column: number) => `trim(coalesce(c${column}, ''))`;
    await database.run("DROP TABLE IF EXISTS refused_rows; DROP TABLE IF EXISTS refused_scans;");
    await database.run(
      STATEMENT.replace("{columns}", () => fields.map((field) => `${cells(mapping.columns.get(field) ?? 0)} AS "${field}"`).join(", "))
        .replace("{file}", () => sqlText(file))
        .replace("{dialect}", () => dialect(headers.length, delimiter))
        .replace("{target}", () => sqlText(target)),
    );
    const [{ read } = { read: 0 }] = await database.rows<{ read: number }>(`SELECT count(*) AS read FROM read_parquet(${sqlText(target)})`);
    const refused = await database.rows<{ line: number; text: string }>(
      "SELECT line, any_value(csv_line) AS text FROM refused_rows GROUP BY line, line_byte_position ORDER BY line_byte_position",
    );
    const rescue = rescueRows(refused, { headers: headers.length, delimiter, columns: mapping.columns, file: name });
    return {
      ...empty,
      records: read + rescue.rescued.length + rescue.unreadable,
      read,
      gaps: rescue.gaps,
      rescued: rescue.rescued,
      unreadable: rescue.unreadable,
      findings: [...findings, ...rescue.findings, ...(read + rescue.rescued.length === 0 ? [noRows(name)] : [])],
    };
  } finally {
    rmSync(copy, { force: true });
  }
}

function dialect(columns: number, delimiter: string): string {
  const names = Array.from({ length: columns }, (_, index) => `'c${index}': 'VARCHAR'`).join(", ");
  return `header = true, auto_detect = false, columns = {${names}}, delim = ${sqlText(delimiter)}, quote = '"', escape = '"', strict_mode = true, max_line_size = 16777216`;
}

async function countRows(database: Database, file: string, columns: number, delimiter: string): Promise<number> {
  const [row] = await database.rows<{ rows: number }>(
    `SELECT count(*) AS rows FROM read_csv(${sqlText(file)}, ${dialect(columns, delimiter)}, ignore_errors = true)`,
  );
  return row?.rows ?? 0;
}

/** The delimiter that parts the header into most cells; a comma where none does. */
function delimiterOf(beginning: string): string {
  const header = beginning.slice(0, beginning.search(/[\r\n]/) >>> 0);
  const unquoted = header.replaceAll(/"(?:[^"]|"")*"/g, "");
  const counts = [",", "\t", ";", "|"].map((delimiter) => ({ delimiter, cells: unquoted.split(delimiter).length }));
  return counts.reduce((best, other) => (other.cells > best.cells ? other : best)).delimiter;
}

function headersOf(beginning: string, delimiter: string): string[] {
  return (Papa.parse<string[]>(beginning, { delimiter, preview: 1 }).data[0] ?? []).map((header) => header.trim());
}

function aboutFile(
  file: string,
  { facts, encoding, headers, mapping }: { facts: TextFacts; encoding: Encoding; headers: string[]; mapping: ReturnType<typeof mapColumns> },
): FileFinding[] {
  const finding = (check: string, severity: FileFinding["severity"], value: string, message: string, wayOut: string): FileFinding => ({
    file, row: 1, field: "", value, check, severity, message, wayOut,
  });
  const findings: FileFinding[] = [];
  if (encoding === "windows-1252" && facts.encoding === "windows-1252")
    findings.push(finding("file_encoding", "note", encoding, "the file is not UTF-8 and was read as Windows-1252", "set encoding for the source if accents look wrong"));
  if (facts.lineEnding === "mixed") findings.push(finding("line_endings", "note", "mixed", "the file mixes line endings; all were read", "nothing to do"));
  if (headers.length === 0) return [...findings, noRows(file)];
  for (const header of mapping.unknown)
    findings.push(finding("unknown_header", "note", header, `column “${header}” is not used`, "map it in the source's columns if it holds a field"));
  for (const header of mapping.repeated)
    findings.push(finding("repeated_header", "ask", header, `column “${header}” fills a field another column fills already; the first counts`, "take one out or map the right one"));
  for (const header of mapping.missing)
    findings.push(finding("mapped_header_missing", "ask", header, `the settings map column “${header}”, which the file does not have`, "correct columns in the source's settings"));
  return findings;
}

function noRows(file: string): FileFinding {
  return { file, row: 1, field: "", value: "", check: "no_rows", severity: "note", message: "the file holds no rows", wayOut: "nothing to do if that is so" };
}
