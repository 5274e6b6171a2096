import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Database } from "../engine/database.ts";
import { contentHash } from "../records/content-hash.ts";
import type { ReadFile } from "../records/raw-records.ts";
import { type ReadPart, readRecords } from "../records/read-records.ts";
import type { SourceFile } from "../records/source-files.ts";
import { readInputs } from "./stage-inputs.ts";
import type { Stages } from "./stages.ts";

/** What the read stage gives: the tables of records, a key of all their contents, and how many files were taken up as read before. */
export interface ReadStage {
  files: ReadFile[];
  key: string[];
  reused: number;
}

/** Reads every file of records that changed since it was last read; others are taken up as they were read then. */
export async function readAll(
  database: Database,
  stages: Stages,
  files: readonly SourceFile[],
  tell: (done: number, of: number) => void,
): Promise<ReadStage> {
  const stage: ReadStage = { files: [], key: [], reused: 0 };
  for (const [index, { source, path, name }] of files.entries()) {
    const inputs = [await contentHash(path), name, readInputs(source)];
    const { folder, reused, key } = await stages.reuse("read", inputs, async (target) => {
      const parts = await readRecords(database, { path, name, source, folder: target });
      writeFileSync(join(target, "read.json"), JSON.stringify(parts));
    });
    const parts = JSON.parse(readFileSync(join(folder, "read.json"), "utf8")) as ReadPart[];
    for (const part of parts)
      stage.files.push({ source, name: part.name, parquet: join(folder, part.parquet), result: part.result });
    stage.key.push(key);
    if (reused) stage.reused += 1;
    tell(index + 1, files.length);
  }
  return stage;
}
