import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { Database } from "../../engine/database.ts";
import { nothingRead } from "../file-read.ts";
import type { ReadPart, RecordsInput } from "../read-records.ts";
import type { ArchiveFiles } from "./archive-files.ts";
import { type ArchiveRemark, remarkFinding } from "./archive-remark.ts";
import type { ArchiveDescription } from "./description.ts";
import { dropViews } from "./join-tables.ts";
import { descriptionAmong, folderOf } from "./locate.ts";
import { openArchive } from "./open-archive.ts";
import { readXmlText } from "./parse-xml.ts";
import { readDescribed } from "./read-described.ts";
import { readDescription } from "./read-description.ts";
import { readWithoutDescription } from "./without-description.ts";

/**
 * Reads a Darwin Core Archive, zipped or in a folder, by the Darwin Core text guide (TDWG 2023): an occurrence core, or
 * an event or taxon core with an occurrence extension. An archive whose description is missing or cannot be read is
 * read by the headers of its files. Nothing is fetched, and what could reach outside the archive is left alone.
 *
 * @returns one part for each file of records, its rows numbered as in the file; at least one, which says what is amiss
 * @example (await readArchive(database, { path: "walks.zip", name: "records/walks.zip", source, folder })).map(({ name }) => name) // => ["records/walks.zip"]
 */
export async function readArchive(database: Database, input: RecordsInput): Promise<ReadPart[]> {
  const work = join(input.folder, "archive");
  mkdirSync(work);
  try {
    const files = await openArchive(input.path, work);
    if ("check" in files) {
      const result = nothingRead("not read", [remarkFinding(input.name, files)]);
      return [{ name: input.name, parquet: "rows.parquet", result }];
    }
    try {
      const parts = await readFiles(database, input, { files, work });
      parts[0]?.result.findings.unshift(...aboutFiles(files).map((remark) => remarkFinding(input.name, remark)));
      return parts;
    } finally {
      files.close();
    }
  } finally {
    await dropViews(database);
    rmSync(work, { recursive: true, force: true });
  }
}

async function readFiles(
  database: Database,
  input: RecordsInput,
  { files, work }: { files: ArchiveFiles; work: string },
): Promise<ReadPart[]> {
  const path = descriptionAmong(files.paths);
  const description = path === undefined ? noDescription() : await describe(files, path);
  if ("check" in description) return await readWithoutDescription(database, input, { files, remark: description });
  const { name, source } = input;
  const reading = {
    database,
    files,
    archive: name,
    within: folderOf(path ?? ""),
    source,
    folder: work,
    nameOf: (file: string) => `${name}/${file}`,
  };
  return await readDescribed(input, reading, description);
}

async function describe(files: ArchiveFiles, path: string): Promise<ArchiveDescription | ArchiveRemark> {
  const taken = await files.take(path);
  if (typeof taken !== "string") return taken;
  try {
    return readDescription(readXmlText(taken));
  } catch (error) {
    return {
      check: "archive_description",
      severity: "ask",
      value: path,
      message: `meta.xml cannot be read: ${error instanceof Error ? error.message : "unknown fault"}; the headers of the files were taken`,
      wayOut: "ask the archive’s publisher for a sound one",
    };
  }
}

function noDescription(): ArchiveRemark {
  return {
    check: "archive_without_description",
    severity: "note",
    value: "",
    message: "the archive holds no meta.xml; it was read by the headers of its files",
    wayOut: "nothing to do if the records are right",
  };
}

/** What is refused of the archive's files, and archives in the archive, which are not opened. */
function aboutFiles({ paths, remarks }: ArchiveFiles): ArchiveRemark[] {
  const others = paths.filter((path) => /\.(zip|gz|tgz|7z|rar)$/i.test(path) || /(^|\/)meta\.xml$/i.test(path));
  return [
    ...remarks,
    ...others
      .filter((path) => path !== descriptionAmong(paths))
      .map((value) => ({
        check: "archive_in_archive",
        severity: "ask" as const,
        value,
        message: "an archive in the archive is not opened",
        wayOut: "name it as a file of the source by itself if it holds records",
      })),
  ];
}
