import type { Database } from "../../engine/database.ts";

/** A part of the evidence under which every trend is worked out again, so that a reader sees what carries it. */
export interface EvidenceSet {
  id: string;
  /** As shown, after "Counting". */
  label: string;
  /** Rows of the view `evidence` it holds, as SQL. */
  where: string;
}

const SETTLED = "established AND NOT provisional";

/** The sets, the first of which the headline figures are made from. A visit without a list is in all but the last. A
 * record shown coarser makes a visit of its own, whose length tells nothing: it is in the set without short lists. */
export const EVIDENCE_SETS: readonly EvidenceSet[] = [
  { id: "main", label: "all records, provisional years left out", where: SETTLED },
  { id: "with_provisional_years", label: "provisional years too", where: "established" },
  {
    id: "without_single_species_lists",
    label: "without visits that named one species",
    where: `${SETTLED} AND (generalised OR coalesce(list_length <> 1, true))`,
  },
  { id: "without_targeted", label: "without surveys for one species", where: `${SETTLED} AND class <> 'targeted'` },
  { id: "without_mass_events", label: "without mass events", where: `${SETTLED} AND class <> 'mass_event'` },
  { id: "without_lots", label: "without specimens and literature", where: `${SETTLED} AND class <> 'lot'` },
  {
    id: "complete_lists",
    label: "only lists declared complete",
    where: `${SETTLED} AND coalesce(complete_list, false)`,
  },
];

/**
 * Lays the view `set_evidence`: the rows of `evidence` that belong to a set.
 *
 * @example await laySet(database, EVIDENCE_SETS[0]) // SELECT count(*) FROM set_evidence leaves provisional years out
 */
export async function laySet(database: Database, { where }: EvidenceSet): Promise<void> {
  await database.run(`CREATE OR REPLACE VIEW set_evidence AS SELECT * FROM evidence WHERE ${where}`);
}
