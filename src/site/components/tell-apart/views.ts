import type { IdentifyTaxon } from "../identify/identify-taxa.ts";
import { told } from "./described.ts";

/** A caste of the settings, and the wider ones it is part of. */
export interface Caste {
  readonly id: string;
  readonly label: string;
  readonly within: readonly string[];
}

/** One comparison of castes that can stand side by side: of each taxon the castes that are meant, none where it tells none apart. */
export interface View {
  /** For an address: its castes in a row. */
  readonly id: string;
  readonly castes: readonly (readonly string[])[];
}

type Castes = Pick<IdentifyTaxon, "castes" | "characters">;

/**
 * The views in which taxa can be compared. A caste stands beside the same caste, or beside one that is part of it or
 * holds it: a queen beside the female of a bee without workers, never beside a male. Castes in which no taxon looks
 * different, but for its size, share a view.
 *
 * @param taxa two to four
 * @param castes of the settings, in their order
 * @returns at least one; where no caste fits all, each taxon by its first
 * @example viewsOf([redTailed, redTailedCuckoo], castes).map(({ id }) => id) // ["queen-worker-female", "male"]
 */
export function viewsOf(taxa: readonly Castes[], castes: readonly Caste[]): View[] {
  const single = new Map<string, string[]>();
  for (const caste of castes) {
    const beside = taxa.map((taxon) => casteBeside(taxon, caste, castes));
    if (beside.some((own) => own !== "") && beside.every((own) => own !== undefined))
      single.set(beside.join(" "), beside as string[]);
  }
  if (single.size === 0) return [{ id: "all", castes: taxa.map(({ castes: own }) => own.slice(0, 1)) }];
  const merged = new Map<string, string[][]>();
  for (const beside of single.values()) {
    const key = taxa.map((taxon, index) => looksOf(taxon, beside[index] ?? "")).join("\n");
    const columns = merged.get(key) ?? taxa.map(() => []);
    for (const [index, caste] of beside.entries())
      if (caste !== "" && !columns[index]?.includes(caste)) columns[index]?.push(caste);
    merged.set(key, columns);
  }
  return [...merged.values()].map((columns) => ({ id: idOf(columns, castes), castes: columns }));
}

/** The caste of a taxon that stands beside a caste; empty where it tells none apart, undefined where none can. */
function casteBeside({ castes }: Castes, { id, within }: Caste, all: readonly Caste[]): string | undefined {
  if (castes.length === 0) return "";
  if (castes.includes(id)) return id;
  const widerOf = (caste: string) => [caste, ...(all.find((one) => one.id === caste)?.within ?? [])];
  const meant = [id, ...within];
  return castes.find((own) => widerOf(own).some((wider) => meant.includes(wider)));
}

/** All that is said of a caste, but for its size. */
function looksOf(taxon: Castes, caste: string): string {
  const parts = [...new Set(taxon.characters.map(({ part }) => part))].filter((part) => part !== "size");
  return JSON.stringify(
    parts.map((part) => {
      const said = told(taxon, part, caste, "");
      return said === undefined ? null : [said.state.words, said.rows.map(({ reliability }) => reliability)];
    }),
  );
}

function idOf(columns: readonly (readonly string[])[], castes: readonly Caste[]): string {
  return castesIn(columns, castes)
    .map(({ id }) => id)
    .join("-");
}

/** The castes a view shows, each once, in the order of the settings. */
export function castesIn(columns: readonly (readonly string[])[], castes: readonly Caste[]): Caste[] {
  return castes.filter(({ id }) => columns.some((own) => own.includes(id)));
}
