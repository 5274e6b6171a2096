/**
 * Times the program on invented records, each part in a process of its own, and sets it against what the same machine
 * needs to load the same file into a table. Writes .build/bench/ and nothing else.
 *
 *   node scripts/bench.ts [--records 1000000,10000000] [--taxa 300] [--memory 2GB] [--pages]
 *   node scripts/bench.ts measures [--species 10,60,300,1000] [--visits 150000]
 *   node scripts/bench.ts site [--atlas atlas] [--runs 5]: pages and the map in a slowed browser
 *   node scripts/bench.ts truth: the same as scripts/truth.ts
 */
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { type Cost, costOf } from "./bench/cost.ts";
import { inventScheme } from "./bench/invent-scheme.ts";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const STAGES = ["read", "interpret", "review", "measure", "publish"] as const;
const COLUMNS = [26, 10, 12, 12, 10];

const said = (number: number) => number.toLocaleString("en-GB");

function line(...cells: string[]): void {
  console.log(
    cells
      .map((cell, i) => (i === 0 ? cell.padEnd(26) : cell.padStart(COLUMNS[i] ?? 12)))
      .join("")
      .trimEnd(),
  );
}

function costLine(name: string, { seconds, processorSeconds, megabytes }: Cost, load: Cost): void {
  const ratio = (seconds / load.seconds).toFixed(2);
  line(name, `${seconds.toFixed(1)} s`, `${processorSeconds.toFixed(1)} s`, `${said(Math.round(megabytes))} MB`, ratio);
}

/** Prints what one size costs and returns the cost of all its tables. */
function reportSize(
  records: number,
  { taxa, memory, withPages }: { taxa: number; memory?: string; withPages: boolean },
): Cost {
  const folder = join(ROOT, ".build/bench", `${records}-${taxa}`);
  if (inventScheme(join(folder, "content"), join(ROOT, "content"), { records, taxa })) console.log("invented anew");
  const place = { folder, ...(memory === undefined ? {} : { memory }) };
  line(`${said(records)} records`, "time", "processor", "memory", "ratio");
  const load = costOf("load", place);
  costLine("loaded only, median of 3", load, load);
  const stages = STAGES.map((stage) => ({ stage, cost: costOf(stage, place) }));
  for (const { stage, cost } of stages) costLine(stage, cost, load);
  const all = costOf("tables", place);
  costLine("all of these, one process", all, load);
  const counts = stages.flatMap(({ cost }) => Object.entries(cost.counts));
  console.log(counts.map(([name, count]) => `${said(count)} ${name}`).join(", "));
  if (withPages) {
    const pages = costOf("pages", place);
    costLine(`${said(pages.counts["pages"] ?? 0)} pages`, pages, load);
  }
  return all;
}

/** Times every part on each size asked for. */
function benchParts(): void {
  const { values } = parseArgs({
    options: {
      records: { type: "string", default: "1000000" },
      taxa: { type: "string", default: "300" },
      memory: { type: "string" },
      pages: { type: "boolean", default: false },
    },
  });
  const options = {
    taxa: Number(values.taxa),
    withPages: values.pages,
    ...(values.memory === undefined ? {} : { memory: values.memory }),
  };
  let last: { records: number; seconds: number } | undefined;
  for (const records of values.records.split(",").map(Number)) {
    const { seconds } = reportSize(records, options);
    if (last !== undefined)
      console.log(
        `${(records / last.records).toFixed(1)} times the records take ${(seconds / last.seconds).toFixed(1)} times as long`,
      );
    last = { records, seconds };
  }
}

const OTHERS: Readonly<Record<string, string>> = {
  measures: "./bench/measures.ts",
  site: "./bench/site.ts",
  truth: "./truth.ts",
};
const other = OTHERS[process.argv[2] ?? ""];
if (other === undefined) benchParts();
else {
  process.argv.splice(2, 1);
  await import(other);
}
