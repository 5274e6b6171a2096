import type { Database, TableFiller } from "../engine/database.ts";

interface Note {
  check: string;
  severity: string;
  field: string;
  value: string;
  message: string;
  wayOut: string;
  /** A correction as field=value; field=value, for a person to rule on. */
  proposal?: string | undefined;
}

/** Characters a finding quotes at most: what is longer is a remark in the wrong column, and a list must stay readable. */
const LONGEST = 1_000;

function shortened(text: string): string {
  return text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
}

const COLUMNS = {
  check_name: "text",
  severity: "text",
  field: "text",
  value: "text",
  message: "text",
  way_out: "text",
  proposal: "text",
} as const;

/** Notes held before they are written: a million names that are not known have a million notes. */
const BATCH = 2048;

/** Writes notes on distinct values into one table, keyed by the value's id. */
export class NoteRows {
  readonly #key: string;
  readonly #filler: TableFiller;
  #rows: { id: number; note: Note }[] = [];

  private constructor(key: string, filler: TableFiller) {
    this.#key = key;
    this.#filler = filler;
  }

  /** Makes the table. @example await NoteRows.open(database, "name_notes", "name_id") */
  static async open(database: Database, table: string, key: string): Promise<NoteRows> {
    return new NoteRows(key, await database.fill(table, { [key]: "integer", ...COLUMNS }));
  }

  add(id: number, notes: readonly Note[]): void {
    for (const note of notes) this.#rows.push({ id, note });
    if (this.#rows.length >= BATCH) this.#write();
  }

  /** Writes what is left; without it the table lacks the last notes. */
  done(): void {
    this.#write();
    this.#filler.done();
  }

  #write(): void {
    const rows = this.#rows;
    this.#rows = [];
    this.#filler.add({
      [this.#key]: rows.map(({ id }) => id),
      check_name: rows.map(({ note }) => note.check),
      severity: rows.map(({ note }) => note.severity),
      field: rows.map(({ note }) => note.field),
      value: rows.map(({ note }) => shortened(note.value)),
      message: rows.map(({ note }) => shortened(note.message)),
      way_out: rows.map(({ note }) => note.wayOut),
      proposal: rows.map(({ note }) => note.proposal ?? ""),
    });
  }
}
