import type { Database } from "../engine/database.ts";
import type { Checklist } from "../names/checklist.ts";
import { isNameRefusal, type NameNote, type NameRefusal } from "../names/match-name.ts";
import { NoteRows } from "./note-rows.ts";

const REFUSED: Record<NameRefusal["reason"], string> = {
  empty: "name_empty",
  qualified: "name_qualified",
  ambiguous: "name_ambiguous",
  hybrid: "name_qualified",
  not_in_checklist: "name_unknown",
};

const NOTES: Record<NameNote["code"], string> = {
  genus_abbreviated: "the genus is abbreviated",
  genus_left_out: "the genus is left out",
  infraspecific_set_aside: "counted for the species; the rest of the name was set aside",
  strict_sense: "the name is used in the strict sense",
  authorship_differs: "the author differs from the checklist's",
};

/** Interprets every distinct name of `name_texts` once and fills the tables `names` and `name_notes`. */
export async function interpretNames(database: Database, checklist: Checklist): Promise<void> {
  const filler = await database.fill("names", { name_id: "integer", taxon_id: "text", refused: "text" });
  const notes = await NoteRows.open(database, "name_notes", "name_id");
  await database.batches(
    'SELECT name_id, "scientificName", "identificationQualifier" FROM name_texts ORDER BY name_id',
    (columns, size) => {
      const rows = { name_id: [] as number[], taxon_id: [] as (string | null)[], refused: [] as (string | null)[] };
      for (let index = 0; index < size; index += 1) {
        const id = Number(columns["name_id"]?.[index]);
        const value = String(columns["scientificName"]?.[index] ?? "");
        const match = checklist.match(value, String(columns["identificationQualifier"]?.[index] ?? ""));
        const refused = isNameRefusal(match);
        rows.name_id.push(id);
        rows.taxon_id.push(refused ? null : match.taxonId);
        rows.refused.push(refused ? REFUSED[match.reason] : null);
        notes.add(id, refused ? [refusalNote(match, value)] : match.notes.map((note) => noteOf(note, value)));
      }
      filler.add(rows);
    },
  );
  filler.done();
  notes.done();
}

function refusalNote({ reason, refused, wayOut, nearest }: NameRefusal, value: string) {
  const near = nearest.length === 0 ? "" : ` (near: ${nearest.join(", ")})`;
  return {
    check: REFUSED[reason],
    severity: "ask" as const,
    field: "scientificName" as const,
    value,
    message: refused,
    wayOut: `${wayOut}${near}`,
    // One name that is near is likely meant; of several, a person chooses.
    proposal: reason === "not_in_checklist" && nearest.length === 1 ? `scientificName=${nearest[0]}` : "",
  };
}

function noteOf({ code, found }: NameNote, value: string) {
  return {
    check: `name_${code}`,
    severity: "note" as const,
    field: "scientificName" as const,
    value,
    message: `${NOTES[code]}: ${found}`,
    wayOut: "nothing to do if that is right",
  };
}
