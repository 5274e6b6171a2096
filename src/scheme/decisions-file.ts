import { z } from "zod";
import { contentPath } from "./content-path.ts";
import { withoutGuard } from "./guarded-cell.ts";
import { readContent } from "./read-content.ts";
import { parseTable } from "./table-file.ts";

/** What a person can rule on a record. */
export const RULINGS = [
  "use",
  "hold",
  "leave out",
  "correct",
  "re-identify",
  "identify",
  "same as",
  "not the same",
  "opinion",
  "withdraw",
] as const;

/** What is known of an identification, apart from the record's status. */
export const IDENTIFICATIONS = [
  "",
  "confirmed on specimen",
  "confirmed on photograph",
  "agreed on description",
  "not examined",
  "cannot be decided",
] as const;

const text = z.string().default("");

/** Fields of a record that a ruling may correct; the rest of their group is then set aside. */
export const CORRECTABLE = [
  "scientificName",
  "gridReference",
  "decimalLatitude",
  "decimalLongitude",
  "eventDate",
  "caste",
] as const;
export type Correctable = (typeof CORRECTABLE)[number];

/** One row of `decisions.csv`: one ruling on one record. Rows are added at the end and never changed. */
export const DecisionRow = z.object({
  decisionID: z.string().min(1, "give every decision an id of its own"),
  recordKey: text.describe("key of the record: its source and its id, or a mark made from its text"),
  ruling: z.enum(RULINGS, { error: `write one of ${RULINGS.join(", ")}` }),
  value: text.describe(
    "correct: field=value; field=value. re-identify: the name. opinion: what a second person would rule. same as, not the same: the other record's key. withdraw: the decisionID or batch taken back",
  ),
  identification: z
    .enum(IDENTIFICATIONS, { error: `leave empty, or write one of ${IDENTIFICATIONS.slice(1).join(", ")}` })
    .default(""),
  partSeen: text.describe("body part the identification rests on"),
  why: text.describe("reason, in words"),
  who: text.describe("a role or initials; a name is personal data"),
  when: text.describe("date and time of the ruling, ISO 8601"),
  check: text.describe("name of the check whose finding led to it"),
  batch: text.describe("id that rulings made together share"),
  filter: text.describe("of a batch: which findings it was made on, in words"),
  count: text.describe("of a batch: how many records it was made on"),
  saidName: text.describe("what the record said when it was ruled on: its name"),
  saidDate: text.describe("its date"),
  saidPlace: text.describe("its place"),
  saidKind: text.describe("its stage, sex, caste and count"),
});
export type DecisionRow = z.infer<typeof DecisionRow>;

/** Columns of `decisions.csv`, in order. */
export const DECISION_COLUMNS = Object.keys(DecisionRow.shape) as (keyof DecisionRow)[];

/** Name of the file in the scheme's folder. */
export const DECISIONS_FILE = "decisions.csv";

/**
 * Reads `decisions.csv`; none where the scheme has no such file.
 *
 * @returns the rulings in the file's order, each with its row
 * @throws {Mistake} on a ruling that cannot be read, with its row and field
 */
export function readDecisions(folder: string): (DecisionRow & { row: number })[] {
  if (contentPath(folder, DECISIONS_FILE) === undefined) return [];
  return parseDecisions(readContent(folder, DECISIONS_FILE));
}

/**
 * The rulings of a file's text. The apostrophe that keeps a spreadsheet from running a cell is no part of what it says.
 *
 * @throws {Mistake} on a ruling that cannot be read, with its row and field
 * @example parseDecisions("decisionID,ruling,why\nd1,use,'=1+1\n")[0]?.why // => "=1+1"
 */
export function parseDecisions(text: string): (DecisionRow & { row: number })[] {
  if (text.trim() === "") return [];
  return parseTable(text, DECISIONS_FILE, DecisionRow).map(
    ({ row, ...cells }) =>
      ({
        ...Object.fromEntries(Object.entries(cells).map(([name, cell]) => [name, withoutGuard(cell)])),
        row,
      }) as DecisionRow & { row: number },
  );
}
