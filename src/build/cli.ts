import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { Command, CommanderError, Option } from "commander";
import { Mistake } from "../mistake.ts";
import { settingsReference } from "../scheme/settings-reference.ts";
import { type Answer, answerInWords } from "./answer.ts";
import { buildAtlas } from "./build-atlas.ts";
import { checkScheme } from "./check-records.ts";
import { lockFolder } from "./lock.ts";
import { makeScheme } from "./make-scheme.ts";
import { createProgress, type Progress } from "./progress.ts";
import { endOnSignal, serve } from "./serve.ts";
import { describeTerminal } from "./terminal.ts";

/** How the program ends. */
export const EXIT = Object.freeze({
  /** Everything that was asked for was done. */
  done: 0,
  /** Our bug: something failed that should not. */
  failed: 1,
  /** The user's mistake: a setting, a file, an option. Nothing was written. */
  mistake: 2,
  /** `check` found records that are held back until somebody decides. */
  blocked: 3,
});

const PACKAGE_ROOT = fileURLToPath(new URL("../../", import.meta.url));

interface Options {
  content?: string;
  out: string;
  base: string;
  memory?: string;
  json?: boolean;
  quiet?: boolean;
  port: string;
}

function version(): string {
  return (JSON.parse(readFileSync(join(PACKAGE_ROOT, "package.json"), "utf8")) as { version: string }).version;
}

const CONTENT = new Option(
  "--content <folder>",
  "the scheme's folder, which holds atlas.yaml (default: content, or this folder)",
);
const OUT = new Option("--out <folder>", "folder of the finished atlas").default("atlas");
const BASE = new Option("--base <path>", "address prefix the atlas will be served under").default("/");
const MEMORY = new Option("--memory <size>", "most memory for the records, such as 2GB; the rest spills to disk");
const JSON_OUTPUT = new Option("--json", "print the accounting, squares and findings as one JSON object");
const QUIET = new Option("--quiet", "print no progress");
const PORT = new Option("--port <number>", "first port to try").default("4321");

/** The program: commands, options and what each does. */
export function program(): Command {
  const cli = new Command("atlaswright")
    .description("Builds a static species-distribution atlas from a recording scheme's folder.")
    .version(version(), "-V, --version", "print the version")
    .helpOption("-h, --help", "print this help")
    .helpCommand("help [command]", "print help on a command")
    .showHelpAfterError("(atlaswright help shows the commands)")
    .exitOverride()
    .addHelpText("after", HELP);
  cli
    .command("build")
    .description("build the atlas: records, tables and pages")
    .addOption(CONTENT)
    .addOption(OUT)
    .addOption(BASE)
    .addOption(MEMORY)
    .addOption(JSON_OUTPUT)
    .addOption(QUIET)
    .action(runBuild);
  cli
    .command("check")
    .description("check content and records without writing a site; findings go to review/ in the scheme's folder")
    .addOption(CONTENT)
    .addOption(MEMORY)
    .addOption(JSON_OUTPUT)
    .addOption(QUIET)
    .action(runCheck);
  cli
    .command("serve")
    .description("serve a built atlas to this machine")
    .addOption(OUT)
    .addOption(BASE)
    .addOption(PORT)
    .action(runServe);
  cli.command("new <folder>").description("make a new scheme's folder from a small commented template").action(runNew);
  cli
    .command("settings")
    .description("print every setting of atlas.yaml with its default and meaning")
    .action(() => {
      process.stdout.write(settingsReference());
    });
  cli
    .command("start", { hidden: true })
    .description("build the demonstration and serve it")
    .addOption(OUT)
    .addOption(PORT)
    .addOption(QUIET)
    .action(runStart);
  return cli;
}

const HELP = `
Results go to stdout, progress to stderr. Exit codes:
  0  done
  1  something failed that should not: please report it
  2  a mistake in settings, content or options: nothing was written
  3  check found records that are held back until somebody decides

Examples:
  atlaswright new my-scheme
  atlaswright check --content my-scheme
  atlaswright build --content my-scheme --out atlas
  atlaswright serve --out atlas`;

async function runBuild(options: Options): Promise<void> {
  const { free, ...run } = prepare(options);
  try {
    print(await buildAtlas({ ...run, out: resolve(options.out), base: options.base }), options);
  } finally {
    free();
  }
}

async function runCheck(options: Options): Promise<void> {
  const { free, ...run } = prepare(options);
  try {
    const answer = await checkScheme({ ...run, reviewFolder: join(run.content, "review") });
    print(answer, options);
    if (options.json !== true)
      process.stdout.write(`\nEvery finding, with file, row and way out: ${answer.findings_file}\n`);
    if (answer.records.held > 0) process.exitCode = EXIT.blocked;
  } finally {
    free();
  }
}

async function runServe(options: Options): Promise<void> {
  const port = Number(options.port);
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    throw new Mistake("--port", `is ${options.port}`, "give a number from 0 to 65535");
  const serving = await serve({ folder: options.out, port, base: options.base });
  process.stdout.write(`${serving.address}\n`);
  process.stderr.write("Ctrl-C ends it.\n");
  await endOnSignal(serving);
}

function runNew(folder: string): void {
  makeScheme(folder);
  process.stdout.write(
    `${folder} is made. Read its atlas.yaml, put your records in its records folder, then:\n  atlaswright check --content ${folder}\n  atlaswright build --content ${folder}\n`,
  );
}

async function runStart(options: Options): Promise<void> {
  const generator = join(PACKAGE_ROOT, "scripts/demonstration/generate.ts");
  if (!existsSync(generator))
    throw new Mistake(
      "the demonstration",
      "is not part of the installed package",
      "run npm start in a clone, or make a scheme with atlaswright new FOLDER",
    );
  const content = join(PACKAGE_ROOT, "content");
  const { free, ...run } = prepare({ ...options, content });
  try {
    const inventing = run.progress.step("invent", "demonstration records");
    const { generateDemonstration } = (await import(pathToFileURL(generator).href)) as {
      generateDemonstration(): { rows: number; isNew: boolean };
    };
    const { rows, isNew } = generateDemonstration();
    inventing.done(`${rows.toLocaleString("en-GB")} rows`, { reused: !isNew });
    await buildAtlas({ ...run, out: resolve(PACKAGE_ROOT, options.out), base: "/" });
  } finally {
    free();
  }
  await runServe({ ...options, out: resolve(PACKAGE_ROOT, options.out), base: "/" });
}

/** The scheme's folder, a work folder of its own, and the log. */
function prepare(options: Pick<Options, "content" | "memory" | "quiet">): {
  content: string;
  workFolder: string;
  memory: string | undefined;
  progress: Progress;
  free: () => void;
} {
  const content = resolve(options.content ?? (existsSync("atlas.yaml") ? "." : "content"));
  if (options.memory !== undefined && !/^\d+(?:\.\d+)?\s*(?:[KMGT]i?B)$/i.test(options.memory))
    throw new Mistake("--memory", `is ${options.memory}`, "give a size such as 500MB or 2GB");
  if (!existsSync(join(content, "atlas.yaml")))
    throw new Mistake(
      "atlas.yaml",
      `is not in ${content}`,
      "name the scheme's folder with --content, or make one with atlaswright new FOLDER",
    );
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

/**
 * Runs the program and says how it ended.
 *
 * @param words the command line after the program's name
 */
export async function main(words: readonly string[]): Promise<void> {
  try {
    await program().parseAsync([...words], { from: "user" });
  } catch (error) {
    process.exitCode = tell(error);
  }
}

/** Says on stderr what went wrong, and gives the exit code. Commander has said its own already. */
function tell(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.mistake;
  if (error instanceof Mistake) {
    process.stderr.write(`${error.message}\n`);
    return EXIT.mistake;
  }
  if (error instanceof Error && /^Out of Memory Error/.test(error.message)) {
    process.stderr.write(`the records do not fit in the memory they may use; give more with --memory\n`);
    return EXIT.mistake;
  }
  process.stderr.write(
    `Something failed that should not. Please report it with the lines below.\n${error instanceof Error ? error.stack : String(error)}\n`,
  );
  return EXIT.failed;
}

await main(process.argv.slice(2));
