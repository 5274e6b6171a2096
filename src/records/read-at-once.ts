import { rmSync, writeFileSync } from "node:fs";
import type { Database } from "../engine/database.ts";
import { copyPlainRows, copyToParquet, mendedFile } from "./copy-to-parquet.ts";
import type { FileFinding } from "./finding.ts";
import { mendRow } from "./mend-row.ts";
import { type CarefulRead, plainRow } from "./read-carefully.ts";
import type { FileShape, FileToRead } from "./read-delimited.ts";
import { rowFinding } from "./row-finding.ts";
import { rowSplitter } from "./row-splitter.ts";
import { writeAsUtf8 } from "./text-file.ts";

/** With more rows refused than this, the file is rather read row by row. */
const MOST_REFUSED = 10_000;
const REFUSED = "refused_rows";

type ReadAtOnce = CarefulRead & { numbering: number[] };

/**
 * Lets the database read a file that promises to be without fault. Single rows with too few or too many cells are
 * mended apart.
 *
 * @returns undefined where the file is not like that
 */
export async function readAtOnce(
  database: Database,
  file: FileToRead,
  shape: FileShape,
): Promise<ReadAtOnce | undefined> {
  const { facts, target } = file;
  const { encoding, headerRow, headers, columns, delimiter } = shape;
  if (encoding !== facts.encoding || (encoding !== "utf-8" && encoding !== "windows-1252")) return undefined;
  if (
    headerRow !== 1 ||
    facts.lineEnding === "mixed" ||
    facts.blankLine ||
    facts.emptyRow ||
    facts.nul ||
    facts.spacedMark ||
    headers < 2 ||
    columns.size === 0
  )
    return undefined;
  const copy = `${target}.txt`;
  const aside = await database.aside();
  try {
    if (encoding !== "utf-8") await writeAsUtf8(file.path, encoding, copy);
    const read = await copyToParquet(aside, {
      file: encoding === "utf-8" ? file.path : copy,
      target,
      header: true,
      delimiter,
      names: Array.from({ length: headers }, (_, column) => `c${column}`),
      columns: new Map([...columns].map(([field, column]) => [field, `c${column}`])),
      refused: REFUSED,
    });
    const refused = await refusedRows(aside, delimiter);
    return refused === undefined || read + refused.length === 0
      ? undefined
      : await mendApart(database, { file, shape, read, refused });
  } catch {
    return undefined;
  } finally {
    aside.close();
    rmSync(copy, { force: true });
  }
}

/** The refused rows, where each has no other fault than the number of its cells; undefined where one has. */
async function refusedRows(
  database: Database,
  delimiter: string,
): Promise<{ row: number; cells: string[] }[] | undefined> {
  const [counts] = await database.rows<{ refused: number; others: number }>(
    `SELECT count(*) AS refused, count(*) FILTER (error_type NOT IN ('MISSING COLUMNS', 'TOO MANY COLUMNS')) AS others FROM ${REFUSED}`,
  );
  if (counts === undefined || counts.others > 0 || counts.refused > MOST_REFUSED) return undefined;
  const lines = await database.rows<{ row: number; text: string }>(
    `SELECT line AS row, any_value(csv_line) AS text FROM ${REFUSED} GROUP BY line ORDER BY line`,
  );
  const rows: { row: number; cells: string[] }[] = [];
  for (const { row, text } of lines) {
    const splitter = rowSplitter(delimiter);
    const found = [...splitter.push(text.replace(/[\r\n]+$/, "")), ...splitter.end()];
    const [only] = found;
    if (only === undefined || found.length !== 1 || only.broken || /[\r\n]/.test(text.trim())) return undefined;
    rows.push({ row, cells: only.cells });
  }
  return rows;
}

async function mendApart(
  database: Database,
  {
    file,
    shape,
    read,
    refused,
  }: { file: FileToRead; shape: FileShape; read: number; refused: readonly { row: number; cells: string[] }[] },
): Promise<ReadAtOnce> {
  const findings: FileFinding[] = [];
  const rescued: number[] = [];
  let plain = "";
  for (const { row, cells } of refused) {
    const mended = mendRow({ row, cells, broken: false }, shape.headers);
    if (mended !== undefined) findings.push(rowFinding(file.name, shape.delimiter, { row, cells }, mended.finding));
    if (mended?.usable === false) continue;
    rescued.push(row);
    plain += plainRow(row, cells, [...shape.columns.values()]);
  }
  if (rescued.length > 0) {
    const copy = `${file.target}.csv`;
    writeFileSync(copy, plain);
    await copyPlainRows(database, copy, mendedFile(file.target), [...shape.columns.keys()]);
    rmSync(copy);
  }
  const lastRow = read + refused.length + 1;
  return {
    read,
    rescued,
    unreadable: refused.length - rescued.length,
    lastRow,
    numbering: refused.map(({ row }) => row),
    findings,
  };
}
