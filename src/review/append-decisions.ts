import { randomBytes } from "node:crypto";
import { copyFileSync, existsSync, readFileSync, realpathSync } from "node:fs";
import { join } from "node:path";
import { Mistake } from "../mistake.ts";
import { addedText } from "../scheme/added-decisions.ts";
import { DECISIONS_FILE, DecisionRow, parseDecisions } from "../scheme/decisions-file.ts";
import { decisionsInForce } from "../scheme/decisions-in-force.ts";
import { readContent } from "../scheme/read-content.ts";
import { holdFile } from "./hold-file.ts";
import type { NewDecision } from "./merge-rulings.ts";
import { privateFolder } from "./private-folder.ts";
import { replaceFile } from "./replace-file.ts";

/** What appending gives: the rows that were added, with their ids and times, and all rows of the file after them. */
export interface Appended {
  added: DecisionRow[];
  all: DecisionRow[];
}

/** The file as it stood before this process first wrote it is kept under this name in the scheme's `review` folder. */
export const BACKUP = join("review", "decisions.csv.before");

type Rulings = readonly NewDecision[] | ((before: readonly DecisionRow[]) => readonly NewDecision[]);

const queues = new Map<string, Promise<unknown>>();
const backedUp = new Set<string>();

/**
 * Adds rulings at the end of `decisions.csv`, and changes nothing else in it. The file is read again right before, so
 * that what an editor or another process wrote in between stays; calls wait for each other, within this process and
 * between processes. It is replaced in one step, so that it is never half written.
 *
 * @param folder the scheme's folder
 * @param rulings each becomes a row with an id and the time of writing; whether its record exists is the caller's to know.
 *   A function gets the rows that are there, read in the same turn
 * @returns rows as they will be read
 * @throws {Mistake} where the file cannot be read, or with these rulings could not be: nothing is written then
 * @example await appendDecisions("content", [{ recordKey: "walks:1", ruling: "use", … }])
 */
export function appendDecisions(folder: string, rulings: Rulings): Promise<Appended> {
  const key = realpathSync(folder);
  const turn = (queues.get(key) ?? Promise.resolve()).catch(() => {}).then(() => appendNow(key, rulings));
  queues.set(key, turn);
  return turn;
}

async function appendNow(folder: string, rulings: Rulings): Promise<Appended> {
  privateFolder(join(folder, "review"));
  const free = await holdFile(join(folder, "review", "decisions.csv.held"));
  try {
    const file = join(folder, DECISIONS_FILE);
    const isThere = existsSync(file);
    const text = isThere ? readContent(folder, DECISIONS_FILE) : "";
    const before = parseDecisions(text);
    const added = withIds(typeof rulings === "function" ? rulings(before) : rulings, before);
    const all = [...before, ...added];
    decisionsInForce(all);
    if (added.length === 0) return { added, all };
    if (isThere && !backedUp.has(folder)) copyFileSync(file, join(folder, BACKUP));
    backedUp.add(folder);
    replaceFile(file, `${byteOrderMark(file)}${text}${addedText(text, added)}`);
    return { added, all };
  } finally {
    free();
  }
}

/** The mark some spreadsheets begin a file with, which reading leaves out. */
function byteOrderMark(file: string): string {
  return existsSync(file) && readFileSync(file).subarray(0, 3).equals(Buffer.from("\uFEFF")) ? "\uFEFF" : "";
}

function withIds(rulings: readonly NewDecision[], before: readonly DecisionRow[]): DecisionRow[] {
  const taken = new Set(before.map(({ decisionID }) => decisionID));
  const when = new Date().toISOString().replace(/\.\d+Z$/, "Z");
  return rulings.map((ruling) => {
    const parsed = DecisionRow.safeParse(trimmed({ ...ruling, decisionID: freeId(taken), when }));
    if (parsed.success) return parsed.data;
    const [issue] = parsed.error.issues;
    throw new Mistake(
      String(issue?.path[0] ?? "a ruling"),
      `is “${String(ruling[issue?.path[0] as keyof NewDecision] ?? "")}”`,
      issue?.message ?? "correct it",
      { file: DECISIONS_FILE },
    );
  });
}

/** Cells are read without the spaces around them, so they are written without; what is no text is written as it is read. */
function trimmed(row: DecisionRow): Record<string, string> {
  return Object.fromEntries(
    Object.entries(row).map(([name, value]) => [name, value.toWellFormed().replaceAll("\0", "\uFFFD").trim()]),
  );
}

/** Eight random letters and figures after a d, none of another decision. */
function freeId(taken: Set<string>): string {
  for (;;) {
    const id = `d${randomBytes(5).toString("hex")}`;
    if (taken.has(id)) continue;
    taken.add(id);
    return id;
  }
}
