import { cpSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { gatherFindings } from "../../src/build/findings.ts";
import { readAll } from "../../src/build/read-stage.ts";
import { openStages } from "../../src/build/stages.ts";
import { type Database, openDatabase, sqlText } from "../../src/engine/database.ts";
import { interpretRecords } from "../../src/records/record-stage.ts";
import { sourceFiles } from "../../src/records/source-files.ts";
import { reviewRecords } from "../../src/review/review-stage.ts";
import { readScheme, type Scheme } from "../../src/scheme/scheme.ts";
import { generateDemonstration } from "../demonstration/generate.ts";

const CONTENT = fileURLToPath(new URL("../../content", import.meta.url));

/**
 * Makes the demonstration in a folder, reads, interprets and reviews its records, and lays beside them what was truly
 * seen and what was spoilt: tables `true_rows`, `known_errors` and `true_squares`. The caller closes the database.
 *
 * @param folder for the scheme, the truth and the stages; what is there from an earlier run is taken up
 * @param seed of the demonstration
 */
export async function reviewDemonstration(folder: string, seed = 1): Promise<{ database: Database; scheme: Scheme }> {
  const [content, truthFolder, work] = ["content", "truth", "work"].map((part) => join(folder, part)) as [
    string,
    string,
    string,
  ];
  cpSync(CONTENT, content, {
    recursive: true,
    filter: (path) => !["records", "review", "decisions.csv"].includes(basename(path)),
  });
  generateDemonstration({ seed, outFolder: join(content, "records"), truthFolder });
  const scheme = readScheme(content);
  const database = await openDatabase({ spillFolder: join(work, "spill") });
  const { files } = await readAll(database, openStages(work), sourceFiles(content, scheme.settings.sources), () => {});
  await interpretRecords(database, scheme, files);
  await reviewRecords(database, scheme);
  await gatherFindings(database, files);
  for (const [table, file] of [
    ["true_rows", "rows.csv"],
    ["known_errors", "errors.csv"],
    ["true_squares", "truth.csv"],
  ] as const)
    await database.run(
      `CREATE OR REPLACE TABLE ${table} AS SELECT * FROM read_csv(${sqlText(join(truthFolder, file))}, all_varchar = true, header = true, delim = ',', quote = '"', escape = '"')`,
    );
  return { database, scheme };
}
