import { createHash } from "node:crypto";
import { createReadStream, readdirSync, statSync } from "node:fs";
import { join } from "node:path";

/**
 * SHA-256 of a file's bytes, or of a folder's: names and bytes of all files in it, in order.
 *
 * @example await contentHash("records/walks.csv") // => "9f86d081884c7d65…"
 */
export async function contentHash(path: string): Promise<string> {
  const hash = createHash("sha256");
  const files = statSync(path).isDirectory() ? filesIn(path) : [path];
  for (const file of files) {
    if (file !== path) hash.update(`${file.slice(path.length)}\0${statSync(file).size}\0`);
    for await (const piece of createReadStream(file, { highWaterMark: 1 << 22 })) hash.update(piece as Buffer);
  }
  return hash.digest("hex");
}

function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}
