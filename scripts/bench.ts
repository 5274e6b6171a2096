/**
 * Times the program on invented records, each part in a process of its own, and sets it against what the same machine
 * needs for less. Writes .build/bench/ and nothing else.
 *
 *   node scripts/bench.ts [--records 1000000,10000000]
 */
import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, readdirSync, rmSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { measureScheme } from "../src/build/pipeline.ts";
import { createProgress } from "../src/build/progress.ts";
import { renderSite } from "../src/build/render-site.ts";
import { openDatabase } from "../src/engine/database.ts";
import { publish } from "../src/publishing/publish.ts";
import { generateDemonstration } from "./demonstration/generate.ts";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const BENCH = join(ROOT, ".build/bench");

/** What one part cost: wall clock and the largest resident set of its process. */
interface Cost {
  seconds: number;
  megabytes: number;
  pages?: number;
}

/** A part works in the folder of one size, which holds `content`; it gives further counts, if any. */
type Part = (folder: string) => Promise<Partial<Cost>>;

const PARTS: Readonly<Record<string, Part>> = {
  /** The engine alone: every file of records into a table, as text. */
  async load(folder) {
    const database = await openDatabase({ spillFolder: fresh(folder, "load") });
    for (const [i, path] of filesOf(join(folder, "content/records")).entries()) {
      await database.run(
        `CREATE TABLE loaded_${i} AS FROM read_csv($path, header = true, all_varchar = true, ignore_errors = true)`,
        { path },
      );
    }
    database.close();
    return {};
  },
  /** From files to published tables. */
  async tables(folder) {
    const progress = createProgress({ stream: process.stderr, quiet: false, isTerminal: false, colour: false });
    const { database, scheme, read } = await measureScheme({
      content: join(folder, "content"),
      workFolder: fresh(folder, "work"),
      progress,
    });
    await publish(database, scheme, { folder: fresh(folder, "published"), read });
    database.close();
    return {};
  },
  /** From published tables to pages. */
  async pages(folder) {
    let pages = 0;
    await renderSite({
      published: join(folder, "published"),
      base: "/",
      workFolder: join(folder, "astro"),
      outFolder: join(folder, "site"),
      log: console.error,
      onPage: (done) => {
        pages = done;
      },
    });
    return { pages };
  },
};

function fresh(folder: string, name: string): string {
  const path = join(folder, name);
  rmSync(path, { recursive: true, force: true });
  mkdirSync(path, { recursive: true });
  return path;
}

function filesOf(folder: string): string[] {
  const names = readdirSync(folder).filter((name) => /\.(csv|tsv|txt)$/.test(name));
  return names.map((name) => join(folder, name)).sort();
}

/** The demonstration with so many records, made once. */
function prepare(records: number): string {
  const folder = join(BENCH, String(records));
  if (!existsSync(join(folder, "content/atlas.yaml"))) {
    const isText = (path: string) => basename(path) !== "records";
    cpSync(join(ROOT, "content"), join(folder, "content"), { recursive: true, filter: isText });
  }
  generateDemonstration({
    records,
    outFolder: join(folder, "content/records"),
    truthFolder: join(folder, "truth"),
  });
  return folder;
}

/** Runs one part in a process of its own, so that no part profits from another. */
function cost(part: string, folder: string): Cost {
  const self = fileURLToPath(import.meta.url);
  const stdio = ["ignore", "pipe", "inherit"] as const;
  const child = spawnSync(process.execPath, [self, "--part", part, "--folder", folder], {
    encoding: "utf8",
    stdio: [...stdio],
  });
  if (child.status !== 0) throw new Error(`${part} of ${folder} fails`);
  return JSON.parse(child.stdout) as Cost;
}

async function runPart(name: string, folder: string): Promise<void> {
  const part = PARTS[name];
  if (part === undefined) throw new Error(`there is no part ${name}`);
  const begun = performance.now();
  const counts = await part(folder);
  const seconds = (performance.now() - begun) / 1000;
  process.stdout.write(JSON.stringify({ ...counts, seconds, megabytes: process.resourceUsage().maxRSS / 1024 }));
}

function row(...cells: string[]): string {
  return cells.map((cell, i) => (i === 0 ? cell.padEnd(34) : cell.padStart(14))).join("");
}

function report(sizes: readonly number[]): void {
  console.log(row("", "time", "peak memory", "ratio", "reach"));
  let last: { records: number; seconds: number } | undefined;
  for (const records of sizes) {
    const folder = prepare(records);
    const load = cost("load", folder);
    const tables = cost("tables", folder);
    const pages = cost("pages", folder);
    const said = records.toLocaleString("en-GB");
    const [time, memory] = [
      ({ seconds }: Cost) => `${seconds.toFixed(1)} s`,
      ({ megabytes }: Cost) => `${Math.round(megabytes)} MB`,
    ];
    console.log(row(`${said} records, loaded only`, time(load), memory(load)));
    console.log(
      row(
        `${said} records to tables`,
        time(tables),
        memory(tables),
        (tables.seconds / load.seconds).toFixed(2),
        "2 × loading",
      ),
    );
    console.log(
      row(
        `${(pages.pages ?? 0).toLocaleString("en-GB")} pages`,
        time(pages),
        memory(pages),
        `${Math.round((pages.pages ?? 0) / pages.seconds)} a second`,
        "150 a second",
      ),
    );
    if (last !== undefined) {
      const growth = tables.seconds / last.seconds;
      console.log(
        row(
          `growth by ${(records / last.records).toFixed(1)}`,
          "",
          "",
          growth.toFixed(2),
          `${(records / last.records).toFixed(1)}, linear`,
        ),
      );
    }
    last = { records, seconds: tables.seconds };
  }
}

const { values } = parseArgs({
  options: { records: { type: "string", default: "1000000" }, part: { type: "string" }, folder: { type: "string" } },
});
if (values.part !== undefined) await runPart(values.part, values.folder ?? "");
else report(values.records.split(",").map(Number));
