import { type Database, sqlBeside } from "../engine/database.ts";
import { associatedOfKind, readSurroundings } from "../names/surroundings.ts";
import type { Settings } from "../scheme/settings.ts";

/**
 * Reads every distinct text on surroundings once and fills `record_surroundings`, the terms each record states, and
 * `surrounding_notes`, what no term has a word for. Both are empty where the settings tell no surroundings apart.
 */
export async function interpretSurroundings(database: Database, { surroundings }: Settings): Promise<void> {
  await database.run(sqlBeside(import.meta.url, "surrounding-texts.sql"));
  const terms = { surrounding_id: [] as number[], kind: [] as string[], term: [] as string[] };
  const unread = { surrounding_id: [] as number[], field: [] as string[], value: [] as string[] };
  await database.batches("SELECT * FROM surrounding_texts ORDER BY surrounding_id", (columns, size) => {
    for (let index = 0; index < size; index += 1) {
      const id = Number(columns["surrounding_id"]?.[index]);
      const text = (field: string) => String(columns[field]?.[index] ?? "");
      for (const kind of surroundings.kinds) {
        const stated = [text(kind.field), associatedOfKind(text("associatedTaxa"), kind)].filter(Boolean).join(" | ");
        const read = readSurroundings(stated, kind);
        for (const term of read.terms) {
          terms.surrounding_id.push(id);
          terms.kind.push(kind.id);
          terms.term.push(term);
        }
        for (const value of read.unread) {
          unread.surrounding_id.push(id);
          unread.field.push(kind.field);
          unread.value.push(value.slice(0, 200));
        }
      }
    }
  });
  const termFiller = await database.fill("surrounding_terms", {
    surrounding_id: "integer",
    kind: "text",
    term: "text",
  });
  termFiller.add(terms);
  termFiller.done();
  const unreadFiller = await database.fill("surrounding_unread", {
    surrounding_id: "integer",
    field: "text",
    value: "text",
  });
  unreadFiller.add(unread);
  unreadFiller.done();
  await database.run(sqlBeside(import.meta.url, "record-surroundings.sql"));
}
