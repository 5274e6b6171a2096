/**
 * Makes the invented demonstration: records as people write them, and beside them the truth they were drawn from.
 *
 *   node scripts/demonstration/generate.ts [--seed N] [--records N] [--null-truth] [--out DIR] [--truth-out DIR]
 */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { spoilRows } from "./errors/spoil-rows.ts";
import { randomStream } from "./random.ts";
import type { Row, Source } from "./source.ts";
import { countWeek } from "./sources/count-week.ts";
import { countyCardIndex } from "./sources/county-card-index.ts";
import { gardens } from "./sources/gardens.ts";
import { greatYellowSurvey } from "./sources/great-yellow-survey.ts";
import { museum } from "./sources/museum.ts";
import { photographs } from "./sources/photographs.ts";
import { portalCopy } from "./sources/portal-copy.ts";
import { walks } from "./sources/walks.ts";
import { isStamped, stamp } from "./stamp.ts";
import type { TruthKind } from "./truth.ts";
import { inventWorld, type World } from "./world.ts";
import { writeSource } from "./write.ts";
import { type MadeSource, writeTruth } from "./write-truth.ts";

/** The sources, in the order they are made: a copy comes after what it copies. */
export const SOURCES: readonly Source[] = [
  walks,
  gardens,
  photographs,
  countWeek,
  greatYellowSurvey,
  museum,
  countyCardIndex,
  portalCopy,
];

/** What to make. */
export interface DemonstrationOptions {
  /** Same seed, same bytes. 1 unless given. */
  readonly seed?: number;
  /** Rows in all, about; from 2,000. 120,000 unless given. */
  readonly records?: number;
  /** Folder for the records; made where missing. `content/records` unless given. */
  readonly outFolder?: string;
  /** Folder for the truth, never among the records. `.build/demonstration` unless given. */
  readonly truthFolder?: string;
  /** "null": nothing but effort changes between the periods. "changing" unless given. */
  readonly truth?: TruthKind;
}

/** What was made, or found made already. */
export interface Demonstration {
  readonly isNew: boolean;
  /** Rows in all, headers not counted. */
  readonly rows: number;
  readonly outFolder: string;
  readonly truthFolder: string;
}

const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/**
 * Writes the demonstration's records and truth, unless the same are there: same options, same generator, same files.
 *
 * @throws Error where a folder cannot be written
 * @example generateDemonstration({ seed: 1, records: 120_000 }).isNew // false the second time
 */
export function generateDemonstration(options: DemonstrationOptions = {}): Demonstration {
  const { seed = 1, records = 120_000, truth = "changing" } = options;
  const outFolder = options.outFolder ?? join(ROOT, "content", "records");
  const truthFolder = options.truthFolder ?? join(ROOT, ".build", "demonstration");
  const made = { outFolder, truthFolder, asked: { seed, records, truth }, files: SOURCES.map(({ file }) => file) };
  const found = isStamped(made);
  if (found !== undefined) {
    return { isNew: false, rows: found, outFolder, truthFolder };
  }
  mkdirSync(outFolder, { recursive: true });
  mkdirSync(truthFolder, { recursive: true });
  const world = inventWorld(seed, truth);
  const sources = makeSources(world, seed, records);
  for (const { source, rows } of sources) {
    writeSource(join(outFolder, source.file), source, rows);
  }
  writeTruth(truthFolder, world, sources);
  const rows = sources.reduce((sum, one) => sum + one.rows.length, 0);
  stamp(made, rows);
  return { isNew: true, rows, outFolder, truthFolder };
}

/** Makes all rows first and spoils them afterwards, so that a copy is of the row as it was. */
function makeSources(world: World, seed: number, records: number): MadeSource[] {
  const made = new Map<string, Row[]>();
  for (const source of SOURCES) {
    made.set(source.id, source.rows(world, Math.round(records * source.share), randomStream(seed, source.id), made));
  }
  return SOURCES.map((source) => {
    const rows = made.get(source.id) as Row[];
    return { source, rows, errors: spoilRows(source, rows, randomStream(seed, `errors of ${source.id}`)) };
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values } = parseArgs({
    options: {
      seed: { type: "string", default: "1" },
      records: { type: "string", default: "120000" },
      "null-truth": { type: "boolean", default: false },
      out: { type: "string" },
      "truth-out": { type: "string" },
    },
  });
  const { isNew, rows, outFolder } = generateDemonstration({
    seed: Number(values.seed),
    records: Number(values.records),
    truth: values["null-truth"] ? "null" : "changing",
    ...(values.out ? { outFolder: values.out } : {}),
    ...(values["truth-out"] ? { truthFolder: values["truth-out"] } : {}),
  });
  console.log(`demonstration → ${rows} invented rows in ${outFolder}${isNew ? "" : ", as they were"}`);
}
