import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { gatherFindings } from "../../src/build/findings.ts";
import { measureScheme } from "../../src/build/pipeline.ts";
import type { Progress } from "../../src/build/progress.ts";
import { readAll } from "../../src/build/read-stage.ts";
import { renderSite } from "../../src/build/render-site.ts";
import { openStages } from "../../src/build/stages.ts";
import { type Database, openDatabase } from "../../src/engine/database.ts";
import { openTables, saveTables } from "../../src/engine/saved-tables.ts";
import { MEASURE_TABLES, measure } from "../../src/measures/measure-stage.ts";
import { publish } from "../../src/publishing/publish.ts";
import { layTogether } from "../../src/records/raw-records.ts";
import { interpretRecords, openRecords, RECORD_TABLES } from "../../src/records/record-stage.ts";
import { sourceFiles } from "../../src/records/source-files.ts";
import { openReview, REVIEW_TABLES, reviewRecords } from "../../src/review/review-stage.ts";
import { readScheme } from "../../src/scheme/scheme.ts";
import { measureGroup } from "./group-part.ts";

/** Where a part works: a folder that holds `content`, and the engine's memory limit. */
export interface Place {
  folder: string;
  memory?: string | undefined;
  /** Threads of the engine; all of the machine's without. */
  threads?: number;
  /** The invented group that the part `group` measures, and its visits. */
  group?: { species: number; visits: number };
}

/** What a part gives beside its cost: seconds of the work itself, where that is less than the whole, and counts. */
export interface Outcome {
  seconds?: number;
  counts?: Record<string, number>;
}

const silent: Progress = { step: () => ({ update: () => {}, done: () => {} }), note: () => {}, close: () => {} };

/** Every part by name. Each takes up what the parts before it left in the folder. */
export const PARTS: Readonly<Record<string, (place: Place) => Promise<Outcome>>> = Object.freeze({
  load,
  read: (place: Place) => inDatabase(place, (database) => readPart(database, place)),
  interpret: (place: Place) => inDatabase(place, (database) => interpretPart(database, place)),
  review: (place: Place) => inDatabase(place, (database) => reviewPart(database, place)),
  measure: (place: Place) => inDatabase(place, (database) => measurePart(database, place)),
  publish: (place: Place) => inDatabase(place, (database) => publishPart(database, place)),
  tables,
  pages,
  group: (place: Place) => inDatabase(place, (database) => groupPart(database, place)),
});

/** The engine alone: the files into a table, every column as text. The median of three. */
async function load(place: Place): Promise<Outcome> {
  const scheme = readScheme(join(place.folder, "content"));
  const paths = sourceFiles(scheme.folder, scheme.settings.sources).map(({ path }) => path);
  const times: number[] = [];
  for (let i = 0; i < 3; i += 1) {
    const once = (database: Database) =>
      timed(async () => {
        for (const [file, path] of paths.entries()) {
          const columns = (readFileSync(path, { encoding: "utf8" }).split("\n", 1)[0] ?? "").split(",");
          const types = columns.map((column) => `'${column}': 'VARCHAR'`).join(", ");
          await database.run(
            `CREATE TABLE loaded_${file} AS FROM read_csv($path, header = true, auto_detect = false, delim = ',', quote = '"', columns = {${types}})`,
            { path },
          );
        }
      });
    times.push(await inDatabase(place, once));
  }
  return { seconds: times.toSorted((a, b) => a - b)[1] ?? 0 };
}

async function readPart(database: Database, place: Place): Promise<Outcome> {
  fresh(place, "stages");
  return { seconds: await timed(() => readFiles(database, place)) };
}

async function interpretPart(database: Database, place: Place): Promise<Outcome> {
  const scheme = readScheme(join(place.folder, "content"));
  const { files } = await readFiles(database, place);
  const seconds = await timed(async () => {
    await interpretRecords(database, scheme, files);
    await saveTables(database, fresh(place, "interpreted"), RECORD_TABLES);
  });
  const counts = await database.rows<Record<string, number>>(
    `SELECT (SELECT count(*) FROM places) AS places, (SELECT count(*) FROM dates) AS dates,
      (SELECT count(*) FROM names) AS names, count(*) FILTER (status = 'used') AS used FROM records`,
  );
  return { seconds, counts: counts[0] ?? {} };
}

async function reviewPart(database: Database, place: Place): Promise<Outcome> {
  const scheme = readScheme(join(place.folder, "content"));
  await openInterpreted(database, place);
  const seconds = await timed(async () => {
    await reviewRecords(database, scheme);
    await saveTables(database, fresh(place, "reviewed"), REVIEW_TABLES);
  });
  const counts = await database.rows<Record<string, number>>("SELECT count(*) AS questions FROM review_findings");
  return { seconds, counts: counts[0] ?? {} };
}

async function measurePart(database: Database, place: Place): Promise<Outcome> {
  const scheme = readScheme(join(place.folder, "content"));
  const files = await openInterpreted(database, place);
  await openReview(database, join(place.folder, "reviewed"));
  const unreadable = new Map(files.map(({ source, result }) => [source.id, result.unreadable]));
  const seconds = await timed(async () => {
    await measure(database, scheme, unreadable);
    await saveTables(database, fresh(place, "measured"), MEASURE_TABLES);
  });
  return { seconds };
}

async function publishPart(database: Database, place: Place): Promise<Outcome> {
  const scheme = readScheme(join(place.folder, "content"));
  const files = await openInterpreted(database, place);
  await openReview(database, join(place.folder, "reviewed"));
  await openTables(database, join(place.folder, "measured"), MEASURE_TABLES);
  await gatherFindings(database, files);
  const read = new Map(files.map(({ source, result }) => [source.id, result.records]));
  return { seconds: await timed(() => publish(database, scheme, { folder: fresh(place, "published"), read })) };
}

function groupPart(database: Database, { group }: Place): Promise<Outcome> {
  if (group === undefined) throw new Error("the part group needs a group");
  return measureGroup(database, group);
}

/** From files to published tables, all in one process, as a build does it. */
async function tables(place: Place): Promise<Outcome> {
  const { database, scheme, read } = await measureScheme({
    content: join(place.folder, "content"),
    workFolder: fresh(place, "whole"),
    memory: place.memory,
    progress: silent,
  });
  await publish(database, scheme, { folder: fresh(place, "published"), read });
  database.close();
  return {};
}

/** From published tables to pages. */
async function pages({ folder }: Place): Promise<Outcome> {
  let made = 0;
  const onPage = (done: number) => {
    made = done;
  };
  await renderSite({
    published: join(folder, "published"),
    base: "/",
    workFolder: join(folder, "astro"),
    outFolder: join(folder, "site"),
    log: console.error,
    onPage,
  });
  return { counts: { pages: made } };
}

/** Takes up what the parts `read` and `interpret` left. */
async function openInterpreted(database: Database, place: Place) {
  const { files } = await readFiles(database, place);
  await layTogether(database, files);
  await openRecords(database, join(place.folder, "interpreted"));
  return files;
}

function readFiles(database: Database, place: Place) {
  const scheme = readScheme(join(place.folder, "content"));
  const files = sourceFiles(scheme.folder, scheme.settings.sources);
  return readAll(database, openStages(join(place.folder, "stages")), files, () => {});
}

async function inDatabase<T>(place: Place, use: (database: Database) => Promise<T>): Promise<T> {
  const memory = place.memory === undefined ? {} : { memory: place.memory };
  const threads = place.threads === undefined ? {} : { threads: place.threads };
  const database = await openDatabase({ spillFolder: join(place.folder, "spill"), ...memory, ...threads });
  try {
    return await use(database);
  } finally {
    database.close();
  }
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const begun = performance.now();
  await work();
  return (performance.now() - begun) / 1000;
}

function fresh({ folder }: Place, name: string): string {
  const path = join(folder, name);
  rmSync(path, { recursive: true, force: true });
  mkdirSync(path, { recursive: true });
  return path;
}
