import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Command, Option } from "commander";
import { settingsReference } from "../scheme/settings-reference.ts";
import { runBook } from "./book/book-command.ts";
import { runReview, runTakeBack } from "./desk/review-command.ts";
import { runFeedback, runLetters, runMerge, runPack } from "./review-commands.ts";
import { PACKAGE_ROOT, runBuild, runCheck, runNew, runServe, runStart } from "./run-commands.ts";

function version(): string {
  return (JSON.parse(readFileSync(join(PACKAGE_ROOT, "package.json"), "utf8")) as { version: string }).version;
}

const CONTENT = new Option(
  "--content <folder>",
  "the scheme's folder, which holds atlas.yaml (default: content, or this folder)",
);
const OUT = new Option("--out <folder>", "folder of the finished atlas").default("atlas");
const BASE = new Option("--base <path>", "address prefix the atlas will be served under")
  .default("/")
  .argParser(asPrefix);
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
  addReviewCommands(cli);
  cli
    .command("serve")
    .description("serve a built atlas to this machine")
    .addOption(OUT)
    .addOption(BASE)
    .addOption(PORT)
    .action(runServe);
  cli
    .command("book")
    .description("print a built atlas as one PDF book, with Chromium")
    .addOption(OUT)
    .addOption(BASE)
    .option("--file <file>", "the PDF to write", "atlas.pdf")
    .option("--language <tag>", "a further language of the atlas; its first where not given")
    .option("--browser <program>", "the Chromium to print with; an installed one where not given")
    .addOption(QUIET)
    .action(runBook);
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

/** Commands on the records that want a ruling. All write into review/ of the scheme's folder, and send nothing. */
function addReviewCommands(cli: Command): void {
  const selecting = (name: string) =>
    cli
      .command(name)
      .addOption(CONTENT)
      .option("--taxon <name>", "of this taxon and those within it")
      .option("--region <name>", "of this territory, or of a region as the records state it")
      .option("--recorder <name>", "by this recorder")
      .option("--check <name>", "with this check's question, such as impossible_caste")
      .option("--source <id>", "of this source")
      .addOption(MEMORY)
      .addOption(QUIET);
  selecting("letters").description("write a letter to each recorder whose records raise questions").action(runLetters);
  selecting("pack")
    .description("write a review pack for somebody else to rule on: one page, and a CSV")
    .option("--names", "with the recorders' names")
    .action(runPack);
  cli
    .command("review")
    .description("open the review desk: rule on records in a browser on this machine; it writes decisions.csv alone")
    .addOption(CONTENT)
    .addOption(new Option("--port <number>", "first port to try").default("4322"))
    .addOption(MEMORY)
    .addOption(QUIET)
    .action(runReview);
  cli
    .command("take-back <id>")
    .description("take back a ruling by its decisionID, or all of a batch by the batch's id")
    .addOption(CONTENT)
    .option("--who <role>", "your role or initials")
    .option("--why <words>", "why, in words")
    .action(runTakeBack);
  cli
    .command("merge <files...>")
    .description("take up rulings of worklists and packs that came back")
    .addOption(CONTENT)
    .option("--final", "they stand over rulings in force, as the officer's own do")
    .addOption(MEMORY)
    .addOption(QUIET)
    .action(runMerge);
  cli
    .command("feedback")
    .description("write each recorder a sheet on the records of one year")
    .addOption(CONTENT)
    .requiredOption("--year <year>", "the year the records are of")
    .addOption(MEMORY)
    .addOption(QUIET)
    .action(runFeedback);
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
  atlaswright pack --content my-scheme --taxon "Bombus humilis"
  atlaswright merge review/packs/returned.csv --content my-scheme
  atlaswright build --content my-scheme --out atlas
  atlaswright serve --out atlas
  atlaswright book --out atlas --file atlas.pdf`;

/** An address prefix between slashes, however it was written. */
function asPrefix(path: string): string {
  return `/${path}/`.replaceAll(/\/{2,}/g, "/");
}
