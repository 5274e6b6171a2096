import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Database, openDatabase } from "../engine/database.ts";
import { openTables, saveTables } from "../engine/saved-tables.ts";
import { MEASURE_TABLES, measure } from "../measures/measure-stage.ts";
import { layTogether } from "../records/raw-records.ts";
import { interpretRecords, openRecords, RECORD_TABLES } from "../records/record-stage.ts";
import { sourceFiles } from "../records/source-files.ts";
import { CHECKS } from "../review/checks/index.ts";
import { refuseUnknownChecks } from "../review/known-checks.ts";
import { openReview, REVIEW_TABLES, reviewRecords } from "../review/review-stage.ts";
import { readScheme, type Scheme } from "../scheme/scheme.ts";
import { counted } from "./counted.ts";
import { gatherFindings } from "./findings.ts";
import type { Progress } from "./progress.ts";
import { type ReadStage, readAll } from "./read-stage.ts";
import { sensitiveNotes } from "./sensitive-notes.ts";
import { interpretInputs, measureInputs, reviewInputs } from "./stage-inputs.ts";
import { openStages, type Stages } from "./stages.ts";

/** What a run is given. */
export interface RunOptions {
  /** The scheme's folder. */
  content: string;
  /** A folder of ours for stage results and temporary files. */
  workFolder: string;
  /** Most memory for the records, such as "2GB"; the engine's own default without. */
  memory?: string | undefined;
  /** How many threads the engine may use; all of the machine's without. */
  threads?: number | undefined;
  progress: Progress;
}

/** Records read, interpreted and reviewed, with the tables of these stages open in the database. */
export interface Reviewed {
  scheme: Scheme;
  database: Database;
  stages: Stages;
  read: ReadStage;
  /** Key of everything the records' status depends on. */
  key: string;
}

/** Records measured as well, with the tables of all stages open in the database. */
export interface Measured extends Omit<Reviewed, "read"> {
  /** The tables of records as they were read. */
  files: ReadStage["files"];
  /** Records each source's files hold. */
  read: Map<string, number>;
  /** Key of everything the measures depend on. */
  key: string;
}

/**
 * Runs the record stages of a scheme: read, interpret, measure. What has not changed since the last run is taken up.
 * The caller closes the database.
 *
 * @throws {Mistake} for what is wrong with the scheme's settings and content
 * @example const { database, scheme } = await measureScheme({ content: "content", workFolder: ".build/content", progress })
 */
export async function measureScheme(options: RunOptions): Promise<Measured> {
  const { scheme, database, stages, read, key: reviewed } = await reviewScheme(options);
  try {
    const key = await measureStep(database, stages, scheme, { reviewed, read }, options.progress);
    for (const note of await sensitiveNotes(database, scheme)) options.progress.note(`          ${note}`);
    return { scheme, database, stages, files: read.files, read: totals(read, (file) => file.result.records), key };
  } catch (error) {
    database.close();
    throw error;
  }
}

/**
 * Runs the record stages that rulings are made on: read, interpret, review. The caller closes the database.
 *
 * @throws {Mistake} for what is wrong with the scheme's settings and content
 * @example const { database, scheme } = await reviewScheme({ content: "content", workFolder: ".build/content", progress })
 */
export async function reviewScheme({ content, workFolder, memory, threads, progress }: RunOptions): Promise<Reviewed> {
  const scheme = readScheme(content);
  refuseUnknownChecks(scheme.settings);
  mkdirSync(workFolder, { recursive: true });
  const spillFolder = join(workFolder, "spill");
  rmSync(spillFolder, { recursive: true, force: true });
  const database = await openDatabase({
    spillFolder,
    ...(memory === undefined ? {} : { memory }),
    ...(threads === undefined ? {} : { threads }),
  });
  try {
    const stages = openStages(workFolder);
    const read = await readStep(database, stages, scheme, progress);
    const interpreted = await interpretStep(database, stages, scheme, read, progress);
    await openRecords(database, interpreted.folder);
    const key = await reviewStep(database, stages, scheme, interpreted.key, progress);
    await gatherFindings(database, read.files);
    return { scheme, database, stages, read, key };
  } catch (error) {
    database.close();
    throw error;
  }
}

async function readStep(database: Database, stages: Stages, scheme: Scheme, progress: Progress): Promise<ReadStage> {
  const files = sourceFiles(scheme.folder, scheme.settings.sources);
  const step = progress.step("read", counted(files.length, "file"));
  const read = await readAll(database, stages, files, step.update);
  const records = read.files.reduce((sum, { result }) => sum + result.records, 0);
  step.done(counted(records, "record"), { reused: read.reused === files.length && files.length > 0 });
  for (const { name, result } of read.read)
    progress.note(`          ${name}  ${result.how} → ${counted(result.records, "record")}`);
  return read;
}

async function interpretStep(database: Database, stages: Stages, scheme: Scheme, read: ReadStage, progress: Progress) {
  const records = read.files.reduce((sum, { result }) => sum + result.read + result.rescued.length, 0);
  const step = progress.step("interpret", counted(records, "record"));
  const inputs = [...read.key, interpretInputs(scheme)];
  const stage = await stages.reuse("interpreted", inputs, async (folder) => {
    await interpretRecords(database, scheme, read.files, step.update);
    await saveTables(database, folder, RECORD_TABLES);
    const distinct = await database.rows<{ places: number; dates: number; names: number }>(
      "SELECT (SELECT count(*) FROM places) AS places, (SELECT count(*) FROM dates) AS dates, (SELECT count(*) FROM names) AS names",
    );
    writeFileSync(join(folder, "distinct.json"), JSON.stringify(distinct[0]));
  });
  await dropTables(database, RECORD_TABLES);
  await layTogether(database, read.files);
  const distinct = existsSync(join(stage.folder, "distinct.json"))
    ? (JSON.parse(readFileSync(join(stage.folder, "distinct.json"), "utf8")) as Record<string, number>)
    : {};
  step.done(
    `${counted(distinct["places"] ?? 0, "place")}, ${counted(distinct["dates"] ?? 0, "date")}, ${counted(distinct["names"] ?? 0, "name")}`,
    { reused: stage.reused },
  );
  return stage;
}

async function reviewStep(
  database: Database,
  stages: Stages,
  scheme: Scheme,
  interpreted: string,
  progress: Progress,
): Promise<string> {
  const step = progress.step("review", counted(CHECKS.length, "check"));
  const stage = await stages.reuse("reviewed", [interpreted, reviewInputs(scheme)], async (folder) => {
    await reviewRecords(database, scheme, step.update);
    await saveTables(database, folder, REVIEW_TABLES);
  });
  await dropTables(database, REVIEW_TABLES);
  await openReview(database, stage.folder);
  const [found] = await database.rows<{ blocks: number; ask: number }>(
    "SELECT count(*) FILTER (severity = 'blocks' AND NOT settled) AS blocks, count(*) FILTER (severity = 'ask' AND NOT settled) AS ask FROM record_findings",
  );
  step.done(`${counted(found?.blocks ?? 0, "finding")} that hold a record, ${found?.ask ?? 0} to ask about`, {
    reused: stage.reused,
  });
  return stage.key;
}

async function measureStep(
  database: Database,
  stages: Stages,
  scheme: Scheme,
  { reviewed, read }: { reviewed: string; read: ReadStage },
  progress: Progress,
): Promise<string> {
  const step = progress.step("measure", counted(scheme.taxa.length, "taxon", "taxa"));
  const stage = await stages.reuse("measured", [reviewed, measureInputs(scheme)], async (folder) => {
    const unreadable = totals(read, (file) => file.result.unreadable);
    await measure(database, scheme, unreadable);
    await saveTables(database, folder, MEASURE_TABLES);
  });
  await dropTables(database, MEASURE_TABLES);
  await openTables(database, stage.folder, MEASURE_TABLES);
  const [squares] = await database.rows<{ hectads: number; tetrads: number }>(
    "SELECT count(*) FILTER (resolution_m = 10000) AS hectads, count(*) FILTER (resolution_m = 2000) AS tetrads FROM visited_squares",
  );
  const found = [counted(squares?.hectads ?? 0, "10 km square"), counted(squares?.tetrads ?? 0, "2 km square")];
  step.done(found.join(", "), { reused: stage.reused });
  if (!stage.reused) await noteHalfOverlap(database, scheme, progress);
  return stage.key;
}

/** Says what the strictness of placing.minimum_overlap costs, in squares and records. */
async function noteHalfOverlap(database: Database, { settings }: Scheme, progress: Progress): Promise<void> {
  const [more] = await database.rows<{ tetrads_at_half: number; records_at_half: number }>(
    "SELECT * FROM placing_counts",
  );
  if (more === undefined || settings.placing.minimum_overlap <= 0.5) return;
  progress.note(
    `          an overlap of 0.5 instead of ${settings.placing.minimum_overlap} would add ${counted(more.tetrads_at_half, "2 km square")} (${counted(more.records_at_half, "record")})`,
  );
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
