import { cpSync, existsSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { measureScheme } from "../../src/build/pipeline.ts";
import { publish } from "../../src/publishing/publish.ts";
import { generateDemonstration } from "../demonstration/generate.ts";

const CONTENT = fileURLToPath(new URL("../../content", import.meta.url));
const SILENT = { step: () => ({ update: () => {}, done: () => {} }), note: () => {}, close: () => {} };

/**
 * Makes a demonstration and publishes it, without pages.
 *
 * @param folder for the scheme, the stages and the tables; stages from an earlier run are taken up
 * @param options seed and number of records of the demonstration
 * @returns the published folder
 */
export async function publishDemonstration(
  folder: string,
  { seed, records }: { seed: number; records: number },
): Promise<string> {
  const content = join(folder, "content");
  const published = join(folder, "published");
  cpSync(CONTENT, content, {
    recursive: true,
    filter: (path) => !["records", "review", "decisions.csv"].includes(basename(path)),
  });
  generateDemonstration({ seed, records, outFolder: join(content, "records"), truthFolder: join(folder, "truth") });
  const { database, scheme, read, key } = await measureScheme({
    content,
    workFolder: join(folder, "work"),
    progress: SILENT,
  });
  try {
    const stamp = join(published, "made-from.txt");
    if (!existsSync(stamp) || readFileSync(stamp, "utf8") !== key)
      await publish(database, scheme, { folder: published, read });
  } finally {
    database.close();
  }
  return published;
}
