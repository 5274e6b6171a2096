import type { Database } from "../engine/database.ts";
import { type CasteProblem, type CasteVocabulary, readCaste } from "../names/caste.ts";
import { establishmentAmong, type OccurrenceProblem, readOccurrence } from "../names/occurrence.ts";
import { casteVocabulary } from "../scheme/caste-vocabulary.ts";
import type { Settings } from "../scheme/settings.ts";
import type { Severity } from "./finding.ts";
import { NoteRows } from "./note-rows.ts";

const FIELDS = [
  "lifeStage",
  "sex",
  "caste",
  "individualCount",
  "occurrenceStatus",
  "basisOfRecord",
  "establishmentMeans",
  "degreeOfEstablishment",
  "isTaxonomicScopeFullyReported",
] as const;
type KindField = (typeof FIELDS)[number];

const OCCURRENCE: Record<OccurrenceProblem["code"], [Severity, KindField, string]> = {
  status_not_read: ["ask", "occurrenceStatus", "write present, absent, detected or notDetected"],
  count_zero_but_present: ["ask", "individualCount", "give the count, or the status absent"],
  count_but_absent: ["ask", "individualCount", "give the status present, or no count"],
  count_zero_without_status: ["ask", "occurrenceStatus", "say whether it was looked for and not found"],
  count_not_read: ["note", "individualCount", "write a whole number, or leave it empty"],
  basis_not_read: ["note", "basisOfRecord", "use a class of Darwin Core"],
};
const CASTE: Record<CasteProblem["code"], [Severity, string]> = {
  contradiction: ["blocks", "say which it was"],
  caste_not_of_taxon: ["blocks", "correct the caste or the name"],
  either: ["note", "nothing to do; it counts as not stated"],
  unread_words: ["note", "add the word to castes in the settings if it means one"],
};

/** What a list writes that reports all taxa of the group that were met. */
const DECLARED = /^\s*(true|t|yes|y|1)\s*$/i;

/**
 * Interprets every distinct kind of occurrence of `kind_texts` once and fills the tables `kinds`, `kind_castes`
 * (one row a caste of a kind; `not_stated` where nothing is said) and `kind_notes`. A kind is `complete` where the record
 * declares its list to be, and `established` unless its terms of establishment are among range.not_established.
 */
export async function interpretKinds(database: Database, settings: Settings): Promise<void> {
  const kinds = await database.fill("kinds", {
    kind_id: "integer",
    refused: "text",
    present: "boolean",
    castes: "text",
    complete: "boolean",
    established: "boolean",
  });
  const castes = { kind_id: [] as number[], caste: [] as string[], individuals: [] as (number | null)[] };
  const notes = await NoteRows.open(database, "kind_notes", "kind_id");
  const vocabulary = casteVocabulary(settings);
  await database.batches(
    `SELECT kind_id, ${FIELDS.map((field) => `"${field}"`).join(", ")} FROM kind_texts ORDER BY kind_id`,
    (columns, size) => {
      const rows = {
        kind_id: [] as number[],
        refused: [] as (string | null)[],
        present: [] as boolean[],
        castes: [] as string[],
        complete: [] as boolean[],
        established: [] as boolean[],
      };
      for (let index = 0; index < size; index += 1) {
        const id = Number(columns["kind_id"]?.[index]);
        const fields = Object.fromEntries(
          FIELDS.map((field) => [field, String(columns[field]?.[index] ?? "")]),
        ) as Record<KindField, string>;
        const kind = readKind(fields, settings, vocabulary);
        notes.add(id, kind.notes);
        rows.kind_id.push(id);
        rows.refused.push(kind.refused);
        rows.present.push(kind.present);
        rows.complete.push(DECLARED.test(fields.isTaxonomicScopeFullyReported));
        rows.established.push(establishmentAmong(fields, settings.range.not_established) === undefined);
        rows.castes.push(
          kind.castes
            .map(({ caste }) => caste)
            .filter((caste) => caste !== "not_stated")
            .sort()
            .join("|"),
        );
        for (const { caste, count } of kind.castes) {
          castes.kind_id.push(id);
          castes.caste.push(caste);
          castes.individuals.push(count ?? null);
        }
      }
      kinds.add(rows);
    },
  );
  kinds.done();
  const filler = await database.fill("kind_castes", { kind_id: "integer", caste: "text", individuals: "integer" });
  filler.add(castes);
  filler.done();
  notes.done();
}

function readKind(fields: Record<KindField, string>, settings: Settings, vocabulary: CasteVocabulary) {
  const occurrence = readOccurrence(fields, {
    excludedBases: settings.excluded.basis_of_record,
    excludedEstablishment: settings.excluded.establishment,
  });
  const caste =
    settings.castes.length === 0
      ? { counts: [{ caste: "not_stated", count: undefined }], problems: [] }
      : readCaste(fields, vocabulary);
  const notes = [
    ...exclusionNote(occurrence.excluded),
    ...occurrence.problems.map(({ code, found }) => {
      const [severity, field, wayOut] = OCCURRENCE[code];
      return { check: `occurrence_${code}`, severity, field, value: fields[field], message: found, wayOut };
    }),
    ...caste.problems.map(({ code, found }) => {
      const [severity, wayOut] = CASTE[code];
      return {
        check: `caste_${code}`,
        severity,
        field: "caste",
        value: [fields.caste, fields.sex, fields.lifeStage].filter(Boolean).join(" "),
        message: found,
        wayOut,
      };
    }),
  ];
  return {
    notes,
    refused: refusalOf(occurrence, caste.problems),
    present: occurrence.status !== "absent",
    castes: caste.counts,
  };
}

function exclusionNote(excluded: string | undefined) {
  if (excluded === undefined) return [];
  const [field = "", ...value] = excluded.split(" ");
  return [
    {
      check: "excluded",
      severity: "note" as const,
      field,
      value: value.join(" "),
      message: "is left out by the settings",
      wayOut: "change excluded in the settings if it should count",
    },
  ];
}

function refusalOf(occurrence: ReturnType<typeof readOccurrence>, problems: readonly CasteProblem[]): string | null {
  if (occurrence.excluded !== undefined) return "excluded";
  if (occurrence.status === undefined) return "status_unreadable";
  return problems.some(({ code }) => code === "contradiction") ? "contradictory_castes" : null;
}
