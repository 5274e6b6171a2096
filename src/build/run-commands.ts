import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { Mistake } from "../mistake.ts";
import { type Answer, answerInWords } from "./answer.ts";
import { buildAtlas } from "./build-atlas.ts";
import { checkScheme } from "./check-records.ts";
import { counted } from "./counted.ts";
import { EXIT } from "./endings.ts";
import { lockFolder } from "./lock.ts";
import { makeScheme } from "./make-scheme.ts";
import { createProgress, type Progress } from "./progress.ts";
import { endOnSignal, serve } from "./serve.ts";
import { describeTerminal } from "./terminal.ts";

/** Folder of package.json, two above src/build and dist/build alike. */
export const PACKAGE_ROOT = fileURLToPath(new URL("../../", import.meta.url));
const DEMONSTRATION = join(PACKAGE_ROOT, "content");
const GENERATOR = join(PACKAGE_ROOT, "scripts/demonstration/generate.ts");

/** The options of all commands, as commander gives them. */
export interface Options {
  content?: string;
  out: string;
  base: string;
  memory?: string;
  json?: boolean;
  quiet?: boolean;
  port: string;
}

/** Builds the atlas and prints what became of the records. */
export async function runBuild(options: Options): Promise<void> {
  const { free, ...run } = prepare(options);
  try {
    await inventRecords(run);
    print(await buildAtlas({ ...run, out: resolve(options.out), base: options.base }), options);
  } finally {
    free();
  }
}

/** Checks content and records; ends with its own code where records are held back. */
export async function runCheck(options: Options): Promise<void> {
  const { free, ...run } = prepare(options);
  try {
    await inventRecords(run);
    const answer = await checkScheme({ ...run, reviewFolder: join(run.content, "review") });
    print(answer, options);
    if (options.json !== true && answer.proposed_settings !== "")
      process.stdout.write(
        `\nColumns that are not used yet look to hold these fields. Look, then paste what is right into sources of atlas.yaml:\n\n${answer.proposed_settings}`,
      );
    if (options.json !== true)
      process.stdout.write(
        `\n${counted(answer.questions, "question")} that want a ruling: ${answer.worklist_file} (and .xlsx)\nEvery finding, with file, row and way out: ${answer.findings_file}\n`,
      );
    if (answer.records.held > 0) process.exitCode = EXIT.blocked;
  } finally {
    free();
  }
}

/** Serves a built atlas until it is told to end. */
export async function runServe(options: Options): Promise<void> {
  const serving = await serve({ folder: options.out, port: portOf(options), base: options.base });
  process.stdout.write(`${serving.address}\n`);
  process.stderr.write("Ctrl-C ends it.\n");
  await endOnSignal(serving);
}

/**
 * The first port to try.
 *
 * @throws {Mistake} where it is no port
 * @example portOf({ port: "4321" }) // => 4321
 */
export function portOf(options: Pick<Options, "port">): number {
  const port = Number(options.port);
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    throw new Mistake("--port", `is ${options.port}`, "give a number from 0 to 65535");
  return port;
}

/** Makes a new scheme's folder. */
export function runNew(folder: string): void {
  makeScheme(folder);
  process.stdout.write(
    `${folder} is made. Read its atlas.yaml, put your records in its records folder, then:\n  atlaswright check --content ${folder}\n  atlaswright build --content ${folder}\n`,
  );
}

/** Builds the demonstration and serves it. */
export async function runStart(options: Options): Promise<void> {
  if (!existsSync(GENERATOR))
    throw new Mistake(
      "the demonstration",
      "is not part of the installed package",
      "run npm start in a clone, or make a scheme with atlaswright new FOLDER",
    );
  const out = resolve(PACKAGE_ROOT, options.out);
  const { free, ...run } = prepare({ ...options, content: DEMONSTRATION });
  try {
    await inventRecords(run);
    await buildAtlas({ ...run, out, base: "/" });
  } finally {
    free();
  }
  await runServe({ ...options, out, base: "/" });
}

/** Makes the records of the demonstration, which are not kept in the repository, unless they are there. */
export async function inventRecords({ content, progress }: { content: string; progress: Progress }): Promise<void> {
  if (content !== DEMONSTRATION || !existsSync(GENERATOR)) return;
  const inventing = progress.step("invent", "demonstration records");
  const { generateDemonstration } = (await import(pathToFileURL(GENERATOR).href)) as {
    generateDemonstration(): { rows: number; isNew: boolean };
  };
  const { rows, isNew } = generateDemonstration();
  inventing.done(counted(rows, "row"), { reused: !isNew });
}

/**
 * The scheme's folder of a command: the one named, else this folder, else `content`.
 *
 * @throws {Mistake} where it holds no atlas.yaml
 */
export function schemeFolder(options: Pick<Options, "content">): string {
  const content = resolve(options.content ?? (existsSync("atlas.yaml") ? "." : "content"));
  if (!existsSync(join(content, "atlas.yaml")))
    throw new Mistake(
      "atlas.yaml",
      `is not in ${content}`,
      "name the scheme's folder with --content, or make one with atlaswright new FOLDER",
    );
  return content;
}

/** The scheme's folder, a work folder of its own, and the log. */
export function prepare(options: Pick<Options, "content" | "memory" | "quiet">): {
  content: string;
  workFolder: string;
  memory: string | undefined;
  progress: Progress;
  free: () => void;
} {
  if (options.memory !== undefined && !/^\d+(?:\.\d+)?\s*(?:[KMGT]i?B)$/i.test(options.memory))
    throw new Mistake("--memory", `is ${options.memory}`, "give a size such as 500MB or 2GB");
  const content = schemeFolder(options);
  const workFolder = resolve(
    ".build",
    `${basename(content)}-${createHash("sha256").update(content).digest("hex").slice(0, 8)}`,
  );
  const terminal = describeTerminal(process.stderr, process.env);
  const progress = createProgress({
    stream: process.stderr,
    quiet: options.quiet === true,
    isTerminal: terminal.isTerminal,
    colour: terminal.colour,
    columns: terminal.columns,
  });
  const unlock = lockFolder(workFolder);
  const free = () => {
    progress.close();
    unlock();
  };
  return { content, workFolder, memory: options.memory, progress, free };
}

function print(answer: Answer, options: Options): void {
  process.stdout.write(`${options.json === true ? JSON.stringify(answer, null, 2) : answerInWords(answer)}\n`);
}
