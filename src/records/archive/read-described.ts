import { join } from "node:path";
import { sqlText } from "../../engine/database.ts";
import type { RecordField } from "../../scheme/settings.ts";
import { aboutRecords } from "../about-file.ts";
import { nothingRead } from "../file-read.ts";
import type { FileFinding } from "../finding.ts";
import type { ReadPart, RecordsInput } from "../read-records.ts";
import { remarkFinding } from "./archive-remark.ts";
import { dataSetLicence } from "./data-set-licence.ts";
import type { ArchiveDescription } from "./description.ts";
import { describedFindings, licenceFinding, unmappedTerms, unusedTerms } from "./description-findings.ts";
import { joinTables } from "./join-archive.ts";
import { fieldsOf, type LoadedFile, loadTables, type Reading } from "./load-table.ts";
import { locate } from "./locate.ts";
import { planArchive } from "./plan-archive.ts";
import { type RecordColumns, recordColumns } from "./record-columns.ts";
import { rowKind } from "./row-types.ts";
import { statement } from "./statement.ts";
import { termName } from "./terms.ts";

/** Reads the records of an archive by its description: one part for each file of records. */
export async function readDescribed(
  input: RecordsInput,
  reading: Reading,
  description: ArchiveDescription,
): Promise<ReadPart[]> {
  const plan = planArchive(description);
  const files = plan.records.reduce((sum, { locations }) => sum + locations.length, 0);
  const own = plan.records.flatMap(({ locations }) => locations)[0];
  const single = files === 1 && own !== undefined ? locate(reading.files, own, reading.within) : undefined;
  const named = { ...reading, nameOf: (path: string) => (path === single ? input.name : reading.nameOf(path)) };
  const records = await loadTables(named, "records", plan.records);
  const joined = await joinTables(named, plan, records);
  const licence = await licenceOf(input, reading, description);
  const columns = recordColumns({ ...joined.tables, records: fieldsOf(records), licence });
  const about = [
    ...plan.remarks.map((remark) => remarkFinding(input.name, remark)),
    ...records.remarks.map((remark) => remarkFinding(input.name, remark)),
    ...describedFindings(input, plan, [...records.files, ...joined.files]),
    ...(licence === "" ? [] : [licenceFinding(input.name, licence)]),
    ...joined.findings,
  ];
  const how = `archive by meta.xml, ${description.core === undefined ? "no" : rowKind(description.core)} core`;
  if (records.files.length === 0)
    return [{ name: input.name, parquet: "rows.parquet", result: nothingRead(how, about) }];
  const parts: ReadPart[] = [];
  for (const [location, file] of records.files.entries())
    parts.push(await writePart(input, reading, { file, location, columns, about: location === 0 ? about : [], how }));
  return parts;
}

async function licenceOf(
  { source }: RecordsInput,
  { files, within }: Reading,
  { metadata }: ArchiveDescription,
): Promise<string> {
  if (metadata === "" || source.licence !== "" || source.constants.license !== undefined) return "";
  const path = locate(files, metadata, within);
  const taken = typeof path === "string" ? await files.take(path) : path;
  return typeof taken === "string" ? dataSetLicence(taken) : "";
}

/** A file of records, its number among them, its columns, and what is said of the archive as a whole. */
interface PartToWrite {
  file: LoadedFile;
  location: number;
  columns: RecordColumns;
  about: FileFinding[];
  how: string;
}

async function writePart(
  { source, folder }: RecordsInput,
  { database }: Reading,
  { file, location, columns: { columns, joins }, about, how }: PartToWrite,
): Promise<ReadPart> {
  const { name, read } = file;
  const parquet = `rows-${location}.parquet`;
  const usable = columns.size === 0 ? 0 : read.read + read.rescued.length;
  if (usable > 0)
    await database.run(
      statement("archive-records.sql", {
        columns: [...columns].map(([field, value]) => `${value} AS "${field}"`).join(", "),
        joins,
        location: String(location),
        target: sqlText(join(folder, parquet)),
      }),
    );
  const records = read.read + read.rescued.length + read.unreadable;
  const result = {
    ...(usable > 0 ? read : { ...read, read: 0, rescued: [], unreadable: records }),
    fields: [...columns.keys()],
    records,
    numbering: "column" as const,
    findings: [...about, ...aboutPart(file, records, columns, source), ...file.findings],
    how,
    unmapped: unmappedTerms(file),
  };
  return { name, parquet, result };
}

function aboutPart(
  file: LoadedFile,
  records: number,
  columns: ReadonlyMap<RecordField, string>,
  { constants }: RecordsInput["source"],
): FileFinding[] {
  const places = new Map([...columns.keys()].map((field, place) => [field, place]));
  const mapping = { columns: places, unknown: [], unused: [], repeated: [], missing: [] };
  const header = { row: file.look.shape.headers, headers: file.fields.unused.map(({ term }) => termName(term)) };
  return [...unusedTerms(file), ...aboutRecords(file.name, { records, header, mapping, constants })];
}
