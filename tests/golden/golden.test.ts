/**
 * Small schemes with the tables they should give. Every folder here with an `input` is a case, and is explained in its
 * README.md. An expected file that is missing is written, but not on a build server, where it fails; what differs is
 * kept in `<case>/changed`, to be looked at and, if right, moved to `<case>/expected`.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { runScheme } from "../support/run-scheme.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const HERE = fileURLToPath(new URL(".", import.meta.url));
const CASES = readdirSync(HERE).filter((name) => existsSync(join(HERE, name, "input")));

/** The answer to `--json` and every CSV table, by file name. */
async function outputOf(input: string): Promise<Record<string, string>> {
  const { published, answer } = await runScheme(input, makeTemporaryFolder());
  const data = join(published, "data", answer.edition);
  const tables = readdirSync(data).filter((name) => name.endsWith(".csv"));
  return {
    "answer.json": `${JSON.stringify(answer, null, 2)}\n`,
    ...Object.fromEntries(tables.map((name) => [name, readFileSync(join(data, name), "utf8")])),
  };
}

/** Files whose content is not the expected one, after keeping them where a person can look at them. */
function differences(folder: string, output: Readonly<Record<string, string>>): string[] {
  const changed = join(folder, "changed");
  rmSync(changed, { recursive: true, force: true });
  mkdirSync(join(folder, "expected"), { recursive: true });
  return Object.entries(output).flatMap(([name, text]) => {
    const expected = join(folder, "expected", name);
    if (!existsSync(expected) && process.env["CI"] === undefined) writeFileSync(expected, text);
    if (existsSync(expected) && readFileSync(expected, "utf8") === text) return [];
    mkdirSync(changed, { recursive: true });
    writeFileSync(join(changed, name), text);
    return [name];
  });
}

describe("small schemes", () => {
  it("are there, and each is explained", () => {
    expect(CASES.length).toBeGreaterThan(0);
    expect(CASES.filter((name) => !existsSync(join(HERE, name, "README.md")))).toEqual([]);
  });

  it.each(CASES)("%s gives the expected answer and tables, and no others", async (name) => {
    const output = await outputOf(join(HERE, name, "input"));
    expect(differences(join(HERE, name), output)).toEqual([]);
    expect(readdirSync(join(HERE, name, "expected")).sort()).toEqual(Object.keys(output).sort());
  });
});
