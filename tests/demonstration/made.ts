import { mkdtempSync, readFileSync, realpathSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { type DemonstrationOptions, generateDemonstration, SOURCES } from "../../scripts/demonstration/generate.ts";

/** A demonstration made in a folder of its own, read back from its files. */
export interface ReadDemonstration {
  readonly folder: string;
  /** Rows of each record file, by file name; a row with a cell too many has it under "__parsed_extra". */
  readonly records: ReadonlyMap<string, Record<string, string>[]>;
  readonly truth: Record<string, string>[];
  readonly rows: Record<string, string>[];
  readonly errors: Record<string, string>[];
}

/** Makes a demonstration in a new temporary folder and reads it back. The caller removes `folder`. */
export function makeDemonstration(options: DemonstrationOptions): ReadDemonstration {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), "demonstration-")));
  generateDemonstration({ ...options, outFolder: join(folder, "records"), truthFolder: join(folder, "truth") });
  return {
    folder,
    records: new Map(
      SOURCES.map(({ file, form }) => [file, readTable(join(folder, "records", file), form.encoding, form.delimiter)]),
    ),
    truth: readTable(join(folder, "truth", "truth.csv")),
    rows: readTable(join(folder, "truth", "rows.csv")),
    errors: readTable(join(folder, "truth", "errors.csv")),
  };
}

function readTable(path: string, encoding = "utf-8", delimiter = ","): Record<string, string>[] {
  const text = new TextDecoder(encoding, { fatal: true }).decode(readFileSync(path));
  return Papa.parse<Record<string, string>>(text, { header: true, delimiter, skipEmptyLines: true }).data;
}
