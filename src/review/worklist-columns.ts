import { RULINGS } from "../scheme/decisions-file.ts";

/** A column of the worklist: its name, what stands in it, how wide it is in a spreadsheet, and who fills it. */
export interface WorklistColumn {
  name: string;
  /** Column of the table `worklist` it is taken from; none for those a person fills. */
  from?: string;
  says: string;
  width: number;
}

/** Columns of the worklist and of review packs, in order. The last are empty, for the ruling. */
export const WORKLIST_COLUMNS: readonly WorklistColumn[] = [
  { name: "look", from: "look_no", says: "rows with one number are settled by one look", width: 6 },
  { name: "records", from: "records_of_look", says: "how many records the look settles", width: 8 },
  {
    name: "severity",
    from: "severity",
    says: "blocks: the record is held until somebody rules; ask: it is used meanwhile",
    width: 9,
  },
  { name: "question", from: "question", says: "what is asked", width: 30 },
  { name: "found", from: "message", says: "what was found", width: 60 },
  { name: "settles", from: "way_out", says: "what would settle it", width: 40 },
  {
    name: "proposal",
    from: "proposal",
    says: "a correction to rule, as field=value; it is never applied by itself",
    width: 30,
  },
  { name: "name", from: "said_name", says: "the name the record gives", width: 26 },
  { name: "date", from: "said_date", says: "the date it gives", width: 14 },
  { name: "place", from: "said_place", says: "the place it gives", width: 26 },
  { name: "kind", from: "said_kind", says: "its stage, sex, caste, count and status", width: 16 },
  { name: "locality", from: "locality", says: "its place in words", width: 24 },
  { name: "remarks", from: "remarks", says: "its remarks", width: 30 },
  { name: "source", from: "source", says: "where it came from", width: 16 },
  { name: "file", from: "file", says: "file", width: 26 },
  { name: "row", from: "row", says: "row in the file; the header is row 1", width: 8 },
  { name: "record", from: "record_key", says: "key of the record; leave it as it is", width: 32 },
  { name: "mark", from: "said_mark", says: "stands for what the record says today; leave it as it is", width: 11 },
  { name: "ruling", says: `fill in: ${RULINGS.slice(0, 6).join(", ")}`, width: 12 },
  { name: "value", says: "for correct: field=value; field=value. For re-identify: the name", width: 26 },
  { name: "identification", says: "what is known of the identification", width: 24 },
  { name: "part_seen", says: "body part the identification rests on", width: 14 },
  { name: "why", says: "why, in words", width: 30 },
  { name: "who", says: "your role or initials; a name is personal data", width: 10 },
];

/** Columns that a person fills. */
export const RULED_COLUMNS = ["ruling", "value", "identification", "part_seen", "why", "who"] as const;
