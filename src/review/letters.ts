import { createHash } from "node:crypto";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";
import { type Database, sqlText } from "../engine/database.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { type AskedText, forOthers } from "./for-others.ts";
import { wrapped } from "./wrapped.ts";

/** What the letters gave: files written, and questions nobody is asked about, with the reason. */
export interface Letters {
  letters: { recorder: string; file: string; records: number }[];
  /** Questions on records without a recorder's name, or of people who are named nowhere. */
  withoutName: number;
  suppressed: number;
}

/** Checks whose questions no recorder can answer, and that speak of others' records and opinions. */
const OFFICERS = ["named_site_point", "opinion_waits"];

interface Question extends AskedText {
  recorder: string;
  recorded_by: string;
  record_no: number;
  record_key: string;
  taxon_id: string | null;
  check_name: string;
  said_name: string;
  said_date: string;
  said_place: string;
  said_kind: string;
  locality: string;
}

/**
 * Writes a plain-text letter to each recorder who has records in the worklist, with the questions and what would settle
 * them, as far as `forOthers` lets it be told. What is the officer's alone to settle is left out. Nothing is sent.
 *
 * @param folder where the letters go; what was in it is replaced
 * @param condition on the table `worklist`, as `selectionCondition` makes it
 */
export async function writeLetters(
  database: Database,
  scheme: Scheme,
  { folder, condition = "true" }: { folder: string; condition?: string },
): Promise<Letters> {
  const questions = await database.rows<Question>(
    `SELECT * FROM worklist AS w WHERE check_name NOT IN (${OFFICERS.map(sqlText).join(", ")}) AND ${condition} ORDER BY recorder, record_no, check_name, message`,
  );
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const made: Letters = { letters: [], withoutName: 0, suppressed: 0 };
  for (const [recorder, own] of Map.groupBy(questions, (question) => question.recorder)) {
    if (recorder === "") made.withoutName += own.length;
    else if (own.some(({ recorded_by }) => scheme.suppressed.isSuppressed(recorded_by))) made.suppressed += own.length;
    else {
      const file = `${letterName(recorder, own[0]?.recorded_by ?? recorder)}.txt`;
      writeFileSync(join(folder, file), letterText(own, scheme));
      made.letters.push({ recorder: own[0]?.recorded_by ?? recorder, file, records: recordsOf(own).size });
    }
  }
  writeFileSync(join(folder, "letters.csv"), `${Papa.unparse(made.letters, { escapeFormulae: true })}\n`);
  return made;
}

/**
 * A file's name from a person's or party's: letters and figures, and a mark that keeps two of one name apart.
 *
 * @param recorder the key, from which the mark is
 * @param written the name as written
 * @example letterName("quill zoe", "Zoë Quill") // => "zoe-quill-75d500"
 */
export function letterName(recorder: string, written: string): string {
  const plain = written
    .normalize("NFD")
    .replaceAll(/\p{M}/gu, "")
    .replaceAll(/[^A-Za-z0-9]+/g, "-")
    .replaceAll(/^-|-$/g, "");
  return `${plain.slice(0, 40).toLowerCase()}-${createHash("sha256").update(recorder).digest("hex").slice(0, 6)}`;
}

function recordsOf(questions: readonly Question[]): Map<number, Question[]> {
  return Map.groupBy(questions, ({ record_no }) => record_no);
}

function letterText(questions: readonly Question[], scheme: Scheme): string {
  const { settings } = scheme;
  const records = [...recordsOf(questions).values()];
  const many = records.length === 1 ? "one of your records" : `${records.length} of your records`;
  const parts = records.map((own, index) => recordText(own, index + 1, scheme));
  return [
    `${settings.title}: a question on ${many}`,
    "",
    `Dear ${questions[0]?.recorded_by ?? "recorder"},`,
    "",
    wrapped(
      `thank you for your records of ${settings.group.many}. Before the next edition we should like to ask about ${many}. Any answer helps, “I cannot say any more” too: a record that stays open is kept as you gave it.`,
    ),
    ...(settings.invented
      ? ["", wrapped("The records of this demonstration are invented, and so is everybody in it.")]
      : []),
    "",
    parts.join("\n\n"),
    "",
    wrapped(
      "Please do not go back for a photograph where you would have to disturb a nest, enter land without leave, or be alone near water.",
    ),
    "",
    settings.contact === "" ? settings.title : `${settings.title}, ${settings.contact}`,
    "",
  ].join("\n");
}

function recordText(questions: readonly Question[], number: number, scheme: Scheme): string {
  const [first] = questions;
  if (first === undefined) return "";
  const said = [first.said_name, first.said_date, first.said_place, first.locality, first.said_kind]
    .filter(Boolean)
    .join(", ");
  const asked = questions.map(({ check_name, taxon_id, ...question }) => {
    const { message, way_out } = forOthers(scheme, check_name, taxon_id, question);
    return `${wrapped(`Asked: ${message}.`, "   ")}\n${wrapped(`What would settle it: ${way_out}.`, "   ")}`;
  });
  return [wrapped(`${number}. ${said} (${first.record_key})`), ...asked].join("\n");
}
