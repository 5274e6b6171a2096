/** What became of the records. */
import { type PublishedTable, text, whole } from "./fields.ts";

export const ACCOUNTING_TABLES: readonly PublishedTable[] = [
  {
    name: "accounting",
    title: "What became of each record",
    description: "Records read from each source, by status and reason. The rows of a source add up to what was read.",
    fields: [
      text("source", "identifier of the source"),
      text("status", "used, held or not used"),
      text("reason", "code of the reason"),
      text("reason_in_words", "the reason"),
      whole("records", "records"),
    ],
    primaryKey: ["source", "status", "reason"],
    foreignKeys: [],
    query: "SELECT source, status, reason, reason_in_words, records FROM accounting",
  },
];
