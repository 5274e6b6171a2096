import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Database } from "../../src/engine/database.ts";
import type { ReadFile } from "../../src/records/raw-records.ts";
import { readDelimited } from "../../src/records/read-delimited.ts";
import { interpretRecords } from "../../src/records/record-stage.ts";
import { readTextFacts } from "../../src/records/text-file.ts";
import { readScheme, type Scheme } from "../../src/scheme/scheme.ts";
import { Settings } from "../../src/scheme/settings.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

/** The demonstration's scheme, whose checklist and territories the tests share. */
const DEMONSTRATION = readScheme(fileURLToPath(new URL("../../content", import.meta.url)));

/** A scheme with sources of its own. */
export function schemeOf(sources: object[], more: object = {}): Scheme {
  const settings = Settings.parse({ ...DEMONSTRATION.settings, ...more, sources });
  return { ...DEMONSTRATION, settings };
}

/** A record as interpreted, as far as tests ask. */
export interface Judged {
  record_no: number;
  source: string;
  row: number;
  taxon_id: string | null;
  period: number | null;
  first_day: number | null;
  hectad: string | null;
  tetrad: string | null;
  hectad_reason: string | null;
  tetrad_reason: string | null;
  in_disguise: boolean | null;
  near_line: boolean | null;
  castes: string;
  present: boolean;
  status: "used" | "held" | "not used";
  reason: string;
}

/** A finding as a row. */
export interface Found {
  file: string;
  row: number;
  field: string;
  value: string;
  check_name: string;
  severity: string;
  message: string;
  way_out: string;
}

/** Reads and interprets the text of one file a source, and gives all records and findings. */
export async function interpret(
  database: Database,
  texts: Readonly<Record<string, string>>,
  settings: { sources?: Readonly<Record<string, object>>; more?: object; sites?: Scheme["sites"] } = {},
  decisions: Scheme["decisions"] = new Map(),
): Promise<{ records: Judged[]; findings: Found[]; files: ReadFile[] }> {
  const folder = makeTemporaryFolder();
  const sources = Object.keys(texts).map((id) => ({
    id,
    files: `${id}.csv`,
    datum: "EPSG:4326",
    ...settings.sources?.[id],
  }));
  const scheme = { ...schemeOf(sources, settings.more), decisions, sites: settings.sites ?? [] };
  const files: ReadFile[] = [];
  for (const source of scheme.settings.sources) {
    const [path, parquet] = [join(folder, `${source.id}.csv`), join(folder, `${source.id}.parquet`)];
    writeFileSync(path, texts[source.id] ?? "");
    const name = `records/${source.id}.csv`;
    const result = await readDelimited(database, {
      path,
      name,
      facts: await readTextFacts(path),
      source,
      target: parquet,
    });
    files.push({ source, name, parquet, result });
  }
  await interpretRecords(database, scheme, files);
  const records = await database.rows<Judged>(
    "SELECT r.*, r.record_no - f.first_number AS row FROM records AS r JOIN files AS f USING (file_id) ORDER BY record_no",
  );
  const findings = await database.rows<Found>("SELECT * FROM findings ORDER BY record_no, check_name, field");
  return { records, findings, files };
}
