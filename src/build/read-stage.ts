import { readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Database } from "../engine/database.ts";
import { Mistake } from "../mistake.ts";
import { contentHash } from "../records/content-hash.ts";
import type { ReadFile } from "../records/raw-records.ts";
import { type ReadPart, readRecords } from "../records/read-records.ts";
import type { SourceFile } from "../records/source-files.ts";
import { readInputs } from "./stage-inputs.ts";
import type { Stages } from "./stages.ts";

/** What the read stage gives: the tables of records, a key of all their contents, and how many files were taken up as read before. */
export interface ReadStage {
  files: ReadFile[];
  /** Those of the files that were read now. */
  read: ReadFile[];
  key: string[];
  reused: number;
}

/**
 * Reads every file of records that changed since it was last read; others are taken up as they were read then.
 *
 * @throws {Mistake} where a file changes while it is read
 */
export async function readAll(
  database: Database,
  stages: Stages,
  files: readonly SourceFile[],
  tell: (done: number, of: number) => void,
): Promise<ReadStage> {
  const stage: ReadStage = { files: [], read: [], key: [], reused: 0 };
  for (const [index, { source, path, name }] of files.entries()) {
    const before = stampOf(path);
    const hash = await contentHash(path);
    const { folder, reused, key } = await stages.reuse("read", [hash, name, readInputs(source)], async (target) => {
      const parts = await readRecords(database, { path, name, source, folder: target });
      const after = stampOf(path);
      if (after !== before && (after === "" || (await contentHash(path)) !== hash)) throw changedMeanwhile(name);
      writeFileSync(join(target, "read.json"), JSON.stringify(parts));
    });
    const parts = JSON.parse(readFileSync(join(folder, "read.json"), "utf8")) as ReadPart[];
    const files = parts.map((part) => ({
      source,
      name: part.name,
      parquet: join(folder, part.parquet),
      result: part.result,
    }));
    stage.files.push(...files);
    if (!reused) stage.read.push(...files);
    stage.key.push(key);
    if (reused) stage.reused += 1;
    tell(index + 1, files.length);
  }
  return stage;
}

/** Size and time of the last change of a file, or of all files in a folder. */
function stampOf(path: string): string {
  const stats = statSync(path, { throwIfNoEntry: false });
  if (stats === undefined) return "";
  if (!stats.isDirectory()) return `${stats.size} ${stats.mtimeMs}`;
  return readdirSync(path)
    .sort()
    .map((entry) => `${entry} ${stampOf(join(path, entry))}`)
    .join("\n");
}

function changedMeanwhile(name: string): Mistake {
  return new Mistake(`file ${name}`, "changed while it was read", "wait until it is written whole, then run again", {
    file: name,
  });
}
