import type { Database } from "../engine/database.ts";

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

/** Gathers notes on distinct values and writes them as one table, keyed by the value's id. */
export class NoteRows {
  readonly #key: string;
  readonly #rows: Record<
    "key" | "check_name" | "severity" | "field" | "value" | "message" | "way_out" | "proposal",
    (string | number)[]
  > = {
    key: [],
    check_name: [],
    severity: [],
    field: [],
    value: [],
    message: [],
    way_out: [],
    proposal: [],
  };

  constructor(key: string) {
    this.#key = key;
  }

  add(id: number, notes: readonly Note[]): void {
    for (const note of notes) {
      this.#rows.key.push(id);
      this.#rows.check_name.push(note.check);
      this.#rows.severity.push(note.severity);
      this.#rows.field.push(note.field);
      this.#rows.value.push(shortened(note.value));
      this.#rows.message.push(shortened(note.message));
      this.#rows.way_out.push(note.wayOut);
      this.#rows.proposal.push(note.proposal ?? "");
    }
  }

  async writeTo(database: Database, table: string): Promise<void> {
    const filler = await database.fill(table, {
      [this.#key]: "integer",
      check_name: "text",
      severity: "text",
      field: "text",
      value: "text",
      message: "text",
      way_out: "text",
      proposal: "text",
    });
    const { key, ...others } = this.#rows;
    filler.add({ [this.#key]: key, ...others });
    filler.done();
  }
}
