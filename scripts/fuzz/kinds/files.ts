import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Database, openDatabase, sqlText } from "../../../src/engine/database.ts";
import { mendedFile } from "../../../src/records/copy-to-parquet.ts";
import { type ReadPart, readRecords } from "../../../src/records/read-records.ts";
import { SourceSetting } from "../../../src/scheme/settings.ts";
import { type Fault, FORMATS, mutated, soundFiles, withFaults } from "../../../tests/records/mutated-files.ts";
import type { Random } from "../../demonstration/random.ts";
import type { Kind, Outcome } from "../trial.ts";
import { packed, soundArchive } from "./archive-bytes.ts";

const KINDS = [...FORMATS, "zip", "meta.xml", "occurrence.txt"] as const;
const NASTY = Buffer.from(',;\t|"\n\r\0<>/&=#\u00e9');
/** Records of each sound file. */
const SOUND = 40;

interface FileCase {
  format: (typeof KINDS)[number];
  faults: Fault[];
}

/**
 * Files of every format with faults in their bytes: text, workbook, Parquet, archive. A file is read or not, never with
 * an exception, and every record it holds is read, mended or counted as unreadable.
 *
 * @param folder of its own, for the files; removed by `close`
 */
export async function fileKind(): Promise<Kind<FileCase> & { close(): void }> {
  const folder = mkdtempSync(join(tmpdir(), "fuzz-files-"));
  const database = await openDatabase({ spillFolder: join(folder, "spill"), threads: 1 });
  const sound = await soundFiles(database, folder);
  const zip = await packed(soundArchive());
  const bytesOf = async ({ format, faults }: FileCase): Promise<Buffer> => {
    if (format === "zip") return withFaults(zip, faults);
    if (format !== "meta.xml" && format !== "occurrence.txt") return await mutated(format, sound[format], faults);
    const files = soundArchive();
    return await packed({ ...files, [format]: withFaults(files[format] ?? Buffer.alloc(0), faults) });
  };
  return {
    name: "files",
    share: 0.005,
    draw: (random) => ({
      format: random.pick(KINDS),
      faults: random.chance(0.02) ? [] : Array.from({ length: random.whole(1, 6) }, () => drawFault(random)),
    }),
    judge: async (one) => await readAndCount(database, folder, await bytesOf(one), one),
    close: () => {
      database.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function drawFault(random: Random): Fault {
  return {
    kind: random.pick(["set", "set", "insert", "take out", "repeat", "cut off", "zeros"] as const),
    at: random.next(),
    byte: random.chance(0.5) ? random.pick([...NASTY]) : random.whole(0, 255),
    length: random.whole(1, 60),
  };
}

async function readAndCount(
  database: Database,
  folder: string,
  bytes: Uint8Array,
  { format, faults }: FileCase,
): Promise<Outcome> {
  // Folders never used before: the engine remembers files by their paths.
  const target = mkdtempSync(join(folder, "read-"));
  const path = join(target, "records.dat");
  writeFileSync(path, bytes);
  const source = SourceSetting.parse({ id: "walks", files: "records.dat" });
  const parts = await readRecords(database, { path, name: "records.dat", source, folder: target });
  const usable = parts.reduce((sum, { result }) => sum + result.read + result.rescued.length, 0);
  const answer = usable > 0 ? "accepted" : "refused";
  if (faults.length === 0 && usable !== SOUND)
    return { answer, wrong: `${usable} of ${SOUND} records of a sound file` };
  if (usable === 0 && !parts.some(({ result }) => result.findings.length > 0 || result.unreadable > 0))
    return { answer, wrong: `nothing was read of ${format}, and nothing is said of it` };
  for (const part of parts) {
    const wrong = await wrongCount(database, target, part);
    if (wrong !== undefined) return { answer, wrong };
  }
  rmSync(target, { recursive: true, force: true });
  return { answer };
}

async function wrongCount(
  database: Database,
  folder: string,
  { parquet, result }: ReadPart,
): Promise<string | undefined> {
  const { records, read, rescued, unreadable, numbering } = result;
  if (records !== read + rescued.length + unreadable)
    return `${records} records are not ${read}, ${rescued.length} and ${unreadable}`;
  const main = join(folder, parquet);
  const isApart = numbering !== "column" && rescued.length > 0;
  const files = [main, ...(isApart ? [mendedFile(main)] : [])].filter((file) => existsSync(file));
  if (files.length === 0)
    return read + rescued.length === 0 ? undefined : "records are counted, and there is no file of them";
  const list = files.map(sqlText).join(", ");
  const [found] = await database.rows<{ rows: number }>(
    `SELECT count(*) AS rows FROM read_parquet([${list}], union_by_name = true)`,
  );
  return found?.rows === read + rescued.length
    ? undefined
    : `${found?.rows} rows stand for ${read} and ${rescued.length}`;
}
