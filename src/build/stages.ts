import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";

/** Folders of code that decide what the record stages give: a change in any makes their results anew. */
const RECORD_CODE = ["engine", "geodesy", "grids", "dates", "names", "scheme", "records", "review", "measures"];

/** Results of stages, kept by what went into them. */
export interface Stages {
  /** The folder of a stage's result: kept from an earlier build where the same went in, else made by `produce`. */
  reuse(
    name: string,
    inputs: readonly string[],
    produce: (folder: string) => Promise<void>,
  ): Promise<{ folder: string; reused: boolean; key: string }>;
  /** Throws away results that this build did not use. */
  forgetOthers(): void;
}

/**
 * Opens the store of stage results in a work folder. A result is written beside and renamed when whole, so that a
 * build that is killed leaves none that is half done.
 */
export function openStages(workFolder: string): Stages {
  const used = new Set<string>();
  const code = codeHash(RECORD_CODE);
  return {
    async reuse(name, inputs, produce) {
      const key = hashOf([name, code, ...inputs]).slice(0, 20);
      const folder = join(workFolder, name, key);
      used.add(`${name}/${key}`);
      if (existsSync(folder)) return { folder, reused: true, key };
      const begun = `${folder}.begun`;
      rmSync(begun, { recursive: true, force: true });
      mkdirSync(begun, { recursive: true });
      await produce(begun);
      renameSync(begun, folder);
      return { folder, reused: false, key };
    },
    forgetOthers() {
      const names = new Set([...used].map((one) => one.split("/")[0] ?? ""));
      for (const name of names)
        for (const entry of readdirSync(join(workFolder, name)))
          if (!used.has(`${name}/${entry}`)) rmSync(join(workFolder, name, entry), { recursive: true, force: true });
    },
  };
}

/** SHA-256 over texts, each with its length so that no two lists give the same. */
export function hashOf(parts: readonly string[]): string {
  const hash = createHash("sha256");
  for (const part of parts) hash.update(`${Buffer.byteLength(part)}:`).update(part);
  return hash.digest("hex");
}

/**
 * Hash of all files of some folders of the program, by path and content, and of the versions of what it depends on.
 *
 * @param folders below src, such as "records"; one that is not there counts for nothing
 */
export function codeHash(folders: readonly string[]): string {
  const root = fileURLToPath(new URL("../", import.meta.url));
  const { dependencies } = JSON.parse(readFileSync(join(root, "../package.json"), "utf8")) as { dependencies: object };
  const files = folders.flatMap((folder) => filesUnder(join(root, folder)));
  return hashOf([
    JSON.stringify(dependencies),
    ...files.flatMap((file) => [relative(root, file), readFileSync(file, "utf8")]),
  ]);
}

function filesUnder(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}
