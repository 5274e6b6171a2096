import { join } from "node:path";
import type { Database } from "../../engine/database.ts";
import { mapColumns } from "../column-mapping.ts";
import { nothingRead } from "../file-read.ts";
import { findHeader } from "../header-row.ts";
import { readDelimited } from "../read-delimited.ts";
import type { ReadPart, RecordsInput } from "../read-records.ts";
import { readBeginning, readTextFacts, statedEncoding, type TextFacts } from "../text-file.ts";
import type { ArchiveFiles } from "./archive-files.ts";
import { type ArchiveRemark, refusedArchive, remarkFinding } from "./archive-remark.ts";
import { isVerbatim } from "./plan-archive.ts";

const DELIMITED = /\.(csv|tsv|tab|txt)$/i;
const OCCURRENCES = /(^|\/)occurrences?\.\w+$/i;

const HOW = "archive without meta.xml";

/**
 * Reads an archive without a description that can be used: its file of occurrences, or each delimited file with a
 * column for the name, as files by themselves.
 *
 * @param remark why there is no description
 */
export async function readWithoutDescription(
  database: Database,
  input: RecordsInput,
  { files, remark }: { files: ArchiveFiles; remark: ArchiveRemark },
): Promise<ReadPart[]> {
  const { name, source, folder } = input;
  const found = await filesWithNames(input, files);
  if (found.length === 0) {
    const nothing = refusedArchive(
      "the archive holds no file with a column for the name",
      "map the columns in the source's settings, or pack the file of records into it",
    );
    const findings = [remark, nothing].map((one) => remarkFinding(name, one));
    return [{ name, parquet: "rows.parquet", result: nothingRead(HOW, findings) }];
  }
  const parts: ReadPart[] = [];
  for (const [place, { path, taken, facts }] of found.entries()) {
    const parquet = `rows-${place}.parquet`;
    const own = found.length === 1 ? name : `${name}/${path}`;
    const result = await readDelimited(database, {
      path: taken,
      name: own,
      facts,
      source,
      target: join(folder, parquet),
    });
    if (place === 0) result.findings.unshift(remarkFinding(name, remark));
    parts.push({ name: own, parquet, result: { ...result, how: `${HOW}, ${result.how}` } });
  }
  return parts;
}

interface FoundFile {
  path: string;
  taken: string;
  facts: TextFacts;
}

async function filesWithNames({ source }: RecordsInput, files: ArchiveFiles): Promise<FoundFile[]> {
  const likely = files.paths.filter((path) => DELIMITED.test(path) && !isVerbatim(path));
  const occurrences = likely.filter((path) => OCCURRENCES.test(path));
  const found: FoundFile[] = [];
  for (const path of occurrences.length > 0 ? occurrences : likely) {
    const taken = await files.take(path);
    if (typeof taken !== "string") continue;
    const facts = await readTextFacts(taken);
    const encoding = source.encoding === undefined ? facts.encoding : statedEncoding(source.encoding);
    const { headers } = findHeader(readBeginning(taken, encoding), source, source.delimiter);
    if (mapColumns(headers, source.columns).columns.has("scientificName")) found.push({ path, taken, facts });
  }
  return found;
}
