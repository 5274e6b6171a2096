import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Database, openDatabase } from "../engine/database.ts";
import { openTables, saveTables } from "../engine/saved-tables.ts";
import { MEASURE_TABLES, measure } from "../measures/measure-stage.ts";
import { interpretRecords, RECORD_TABLES } from "../records/record-stage.ts";
import { sourceFiles } from "../records/source-files.ts";
import { readScheme, type Scheme } from "../scheme/scheme.ts";
import { counted } from "./counted.ts";
import { gatherFindings } from "./findings.ts";
import type { Progress } from "./progress.ts";
import { type ReadStage, readAll } from "./read-stage.ts";
import { hashOf, openStages, type Stages } from "./stages.ts";

/** What a run is given. */
export interface RunOptions {
  /** The scheme's folder. */
  content: string;
  /** A folder of ours for stage results and temporary files. */
  workFolder: string;
  memory?: string | undefined;
  progress: Progress;
}

/** Records read, interpreted and measured, with the tables of all stages open in the database. */
export interface Measured {
  scheme: Scheme;
  database: Database;
  stages: Stages;
  /** Records each source's files hold. */
  read: Map<string, number>;
  /** Key of everything the measures depend on. */
  key: string;
}

/**
 * Runs the record stages of a scheme: read, interpret, measure. What has not changed since the last run is taken up.
 *
 * @throws {Mistake} for what is wrong with the scheme's settings and content
 */
export async function measureScheme({ content, workFolder, memory, progress }: RunOptions): Promise<Measured> {
  const scheme = readScheme(content);
  const { settings } = scheme;
  mkdirSync(workFolder, { recursive: true });
  const spillFolder = join(workFolder, "spill");
  rmSync(spillFolder, { recursive: true, force: true });
  const database = await openDatabase({ spillFolder, ...(memory === undefined ? {} : { memory }) });
  const stages = openStages(workFolder);
  const read = await readStep(database, stages, scheme, progress);
  const interpreted = await interpretStep(database, stages, scheme, read, progress);
  const recordsOf = totals(read, (file) => file.result.records);
  await openTables(database, interpreted.folder, RECORD_TABLES);
  await gatherFindings(database, read.files);
  const measuring = progress.step("measure", counted(scheme.taxa.length, "taxon", "taxa"));
  const measured = await stages.reuse(
    "measured",
    [interpreted.key, JSON.stringify([settings, scheme.taxa, scheme.landSquares])],
    async (folder) => {
      await measure(
        database,
        scheme,
        totals(read, (file) => file.result.unreadable),
      );
      await saveTables(database, folder, MEASURE_TABLES);
    },
  );
  await dropTables(database, MEASURE_TABLES);
  await openTables(database, measured.folder, MEASURE_TABLES);
  const [squares] = await database.rows<{ hectads: number; tetrads: number }>(
    "SELECT count(*) FILTER (resolution_m = 10000) AS hectads, count(*) FILTER (resolution_m = 2000) AS tetrads FROM visited_squares",
  );
  measuring.done(
    `${counted(squares?.hectads ?? 0, "10 km square")}, ${counted(squares?.tetrads ?? 0, "2 km square")}`,
    { reused: measured.reused },
  );
  return { scheme, database, stages, read: recordsOf, key: hashOf([measured.key]) };
}

async function readStep(database: Database, stages: Stages, scheme: Scheme, progress: Progress): Promise<ReadStage> {
  const files = sourceFiles(scheme.folder, scheme.settings.sources);
  const step = progress.step("read", counted(files.length, "file"));
  const read = await readAll(database, stages, files, step.update);
  const records = read.files.reduce((sum, { result }) => sum + result.records, 0);
  step.done(counted(records, "record"), { reused: read.reused === files.length && files.length > 0 });
  return read;
}

async function interpretStep(database: Database, stages: Stages, scheme: Scheme, read: ReadStage, progress: Progress) {
  const records = read.files.reduce((sum, { result }) => sum + result.read + result.rescued.length, 0);
  const step = progress.step("interpret", counted(records, "record"));
  const { placing, dates, season: _, ...rest } = scheme.settings;
  const inputs = [
    ...read.key,
    JSON.stringify([
      placing,
      dates,
      rest.periods,
      rest.edition,
      rest.excluded,
      rest.castes,
      rest.territories,
      rest.sources,
      scheme.taxa,
      scheme.territories,
    ]),
  ];
  const stage = await stages.reuse("interpreted", inputs, async (folder) => {
    await interpretRecords(database, scheme, read.files, step.update);
    await saveTables(database, folder, RECORD_TABLES);
    const distinct = await database.rows<{ places: number; dates: number; names: number }>(
      "SELECT (SELECT count(*) FROM places) AS places, (SELECT count(*) FROM dates) AS dates, (SELECT count(*) FROM names) AS names",
    );
    writeFileSync(join(folder, "distinct.json"), JSON.stringify(distinct[0]));
  });
  await dropTables(database, RECORD_TABLES);
  const distinct = existsSync(join(stage.folder, "distinct.json"))
    ? (JSON.parse(readFileSync(join(stage.folder, "distinct.json"), "utf8")) as Record<string, number>)
    : {};
  step.done(
    `${counted(distinct["places"] ?? 0, "place")}, ${counted(distinct["dates"] ?? 0, "date")}, ${counted(distinct["names"] ?? 0, "name")}`,
    { reused: stage.reused },
  );
  return stage;
}

async function dropTables(database: Database, tables: readonly string[]): Promise<void> {
  for (const table of tables) {
    const [found] = await database.rows<{ type: string }>(
      "SELECT table_type AS type FROM information_schema.tables WHERE table_name = $table",
      { table },
    );
    if (found !== undefined) await database.run(`DROP ${found.type === "VIEW" ? "VIEW" : "TABLE"} ${table}`);
  }
}

function totals(read: ReadStage, of: (file: ReadStage["files"][number]) => number): Map<string, number> {
  const sums = new Map<string, number>();
  for (const file of read.files) sums.set(file.source.id, (sums.get(file.source.id) ?? 0) + of(file));
  return sums;
}
