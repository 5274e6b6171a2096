import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Database } from "../engine/database.ts";
import type { ReadFile } from "../records/raw-records.ts";
import { type FileRead, readDelimited } from "../records/read-delimited.ts";
import type { SourceFile } from "../records/source-files.ts";
import { readTextFacts } from "../records/text-file.ts";
import { readInputs } from "./stage-inputs.ts";
import type { Stages } from "./stages.ts";

/** What the read stage gives: the files, a key of all their contents, and how many were read anew. */
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
    const facts = await readTextFacts(path);
    const { folder, reused, key } = await stages.reuse(
      "read",
      [facts.sha256, name, readInputs(source)],
      async (target) => {
        const result = await readDelimited(database, {
          path,
          name,
          facts,
          source,
          target: join(target, "rows.parquet"),
        });
        writeFileSync(join(target, "read.json"), JSON.stringify(result));
      },
    );
    const result = JSON.parse(readFileSync(join(folder, "read.json"), "utf8")) as FileRead;
    stage.files.push({ source, name, parquet: join(folder, "rows.parquet"), result });
    stage.key.push(key);
    if (reused) stage.reused += 1;
    tell(index + 1, files.length);
  }
  return stage;
}
