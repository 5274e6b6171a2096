import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { Mistake } from "../mistake.ts";

const TEMPLATE = fileURLToPath(new URL("../../src/build/template/", import.meta.url));

/** Written here and not kept in the template, since npm leaves files of this name out of packages. */
const IGNORED =
  "# Findings quote the records, and the list names people: they are for the scheme's own eyes.\nreview/\nsuppressed.csv\n";

/**
 * Makes a new scheme's folder from the template, which builds as it stands.
 *
 * @throws {Mistake} where the folder holds something already
 */
export function makeScheme(folder: string): void {
  if (existsSync(folder) && !statSync(folder).isDirectory())
    throw new Mistake(folder, "is a file", "name a new or empty folder");
  if (existsSync(folder) && readdirSync(folder).length > 0)
    throw new Mistake(folder, "is not empty", "name a new or empty folder");
  for (const entry of readdirSync(TEMPLATE, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue;
    const from = join(entry.parentPath, entry.name);
    const to = join(folder, from.slice(TEMPLATE.length));
    mkdirSync(dirname(to), { recursive: true });
    writeFileSync(to, readFileSync(from));
  }
  writeFileSync(join(folder, ".gitignore"), IGNORED);
}
