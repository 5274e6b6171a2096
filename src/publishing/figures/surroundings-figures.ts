import type { Database } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import type { UseRow } from "../contracts.ts";
import { rowsByTaxon } from "./rows-by-taxon.ts";

type Counted = Omit<UseRow, "caste_label" | "kind_label" | "of_visit" | "term_label">;

/** Use of surroundings by every taxon: kinds, terms and castes in the order of the settings, all castes together first. */
export async function useRows(database: Database, { settings }: Scheme): Promise<Map<string, UseRow[]>> {
  const castes = ["all", ...settings.castes.map(({ id }) => id)];
  const { kinds } = settings.surroundings;
  const found = await rowsByTaxon<Counted>(
    database,
    "SELECT * FROM surroundings_use ORDER BY taxon_id, caste, kind, term",
  );
  const place = ({ caste, kind, term }: Counted): readonly [number, number, number] => {
    const at = kinds.findIndex(({ id }) => id === kind);
    return [at, castes.indexOf(caste), kinds[at]?.terms.findIndex(({ id }) => id === term) ?? -1];
  };
  const inOrder = (one: Counted, other: Counted) => {
    const [mine, theirs] = [place(one), place(other)];
    return mine[0] - theirs[0] || mine[1] - theirs[1] || mine[2] - theirs[2];
  };
  const named = (row: Counted): UseRow => {
    const kind = kinds.find(({ id }) => id === row.kind);
    return {
      ...row,
      caste_label: settings.castes.find(({ id }) => id === row.caste)?.label ?? "",
      kind_label: kind?.label ?? row.kind,
      of_visit: kind?.field === "habitat",
      term_label: kind?.terms.find(({ id }) => id === row.term)?.label ?? row.term,
    };
  };
  return new Map([...found].map(([taxon, rows]) => [taxon, rows.toSorted(inOrder).map(named)]));
}
