import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** Which demonstration is meant. */
export interface Made {
  readonly outFolder: string;
  readonly truthFolder: string;
  readonly asked: { readonly seed: number; readonly records: number; readonly truth: string };
  /** Names of the record files. */
  readonly files: readonly string[];
}

interface Stamp {
  key: string;
  rows: number;
  /** Bytes of each file, records first, then truth. */
  bytes: number[];
}

const TRUTH_FILES = ["truth.csv", "rows.csv", "errors.csv"];
/** What the bytes depend on. */
const INPUTS = ["./", "../../src/grids/", "../../src/geodesy/"];
const CONTENT = ["../../content/land-squares.csv", "../../content/regions.geojson"];

/**
 * Looks for the stamp of an earlier run.
 *
 * @returns rows made then, or undefined where the options, the generator or a file's length differ
 * @example isStamped(made) // undefined in a fresh clone
 */
export function isStamped(made: Made): number | undefined {
  const path = stampPath(made);
  if (!existsSync(path)) {
    return undefined;
  }
  const { key, rows, bytes } = JSON.parse(readFileSync(path, "utf8")) as Stamp;
  const isSame =
    key === keyOf(made) && pathsOf(made).every((file, i) => existsSync(file) && statSync(file).size === bytes[i]);
  return isSame ? rows : undefined;
}

/** Leaves a stamp for the next run, written last. @example stamp(made, 119_874) */
export function stamp(made: Made, rows: number): void {
  rmSync(stampPath(made), { force: true });
  const content: Stamp = { key: keyOf(made), rows, bytes: pathsOf(made).map((file) => statSync(file).size) };
  writeFileSync(stampPath(made), `${JSON.stringify(content)}\n`);
}

function stampPath({ truthFolder }: Made): string {
  return join(truthFolder, "stamp.json");
}

function pathsOf({ outFolder, truthFolder, files }: Made): string[] {
  return [...files.map((file) => join(outFolder, file)), ...TRUTH_FILES.map((file) => join(truthFolder, file))];
}

/** Hash of the options, the generator's code, the list of land squares and the areas. */
function keyOf({ asked, outFolder }: Made): string {
  const hash = createHash("sha256").update(JSON.stringify([asked, outFolder]));
  for (const input of INPUTS) {
    const folder = fileURLToPath(new URL(input, import.meta.url));
    const names = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".ts"));
    for (const name of names.map((one) => one.replaceAll("\\", "/")).sort()) {
      hash.update(name).update(readFileSync(join(folder, name)));
    }
  }
  for (const file of CONTENT) hash.update(readFileSync(fileURLToPath(new URL(file, import.meta.url))));
  return hash.digest("hex");
}
