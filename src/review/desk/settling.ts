import type { Scheme } from "../../scheme/scheme.ts";
import type { Settling, SettlingCell } from "./answers.ts";

type Column = Settling["columns"][number] & { cells: Map<string, SettlingCell> };

/** Look-alikes that fit beside a taxon. */
const MOST_LOOKALIKES = 3;

/**
 * What settles a record: the characters of its taxon for its caste, or for each caste where none is stated, beside those
 * of its look-alikes.
 *
 * @param taxon id of the checklist
 * @param castes stated; empty where not stated
 * @returns null where nothing is known of the taxon
 */
export function settlingOf(scheme: Scheme, taxon: string, castes: readonly string[]): Settling | null {
  const own = ownColumns(scheme, taxon, castes);
  if (own.length === 0) return null;
  const account = scheme.accounts.get(taxon)?.front;
  const others = (account?.look_alikes ?? [])
    .flatMap(({ taxonID }) => (taxonID === undefined ? [] : [lookAlike(scheme, taxonID, castes[0] ?? "")]))
    .filter(({ cells }) => cells.size > 0)
    .slice(0, MOST_LOOKALIKES);
  const columns = [...own, ...others];
  const parts = scheme.characters.map(({ part }) => part);
  const rows = [...new Set(parts)].filter((part) => own.some(({ cells }) => cells.has(part)));
  return {
    columns: columns.map(({ cells: _, ...column }) => column),
    rows: rows.map((part) => ({ part, cells: columns.map(({ cells }) => cells.get(part) ?? null) })),
    needs: account?.evidence ?? "",
  };
}

/** One column a caste, those that look alike together. */
function ownColumns(scheme: Scheme, taxon: string, castes: readonly string[]): Column[] {
  const row = scheme.taxa.find(({ taxonID }) => taxonID === taxon);
  const possible = row?.castes ?? [];
  const stated = castes.filter((caste) => possible.length === 0 || possible.includes(caste));
  const wanted = stated.length > 0 ? stated : possible;
  const bySight = new Map<string, { cells: Column["cells"]; castes: string[] }>();
  for (const caste of wanted.length > 0 ? wanted : [""]) {
    const cells = cellsOf(scheme, taxon, caste);
    if (cells.size === 0) continue;
    const sight = JSON.stringify(
      [...cells].map(([part, { state }]) => [part, state]).filter(([part]) => part !== "size"),
    );
    const alike = bySight.get(sight);
    if (alike === undefined) bySight.set(sight, { cells, castes: [caste] });
    else alike.castes.push(caste);
  }
  return [...bySight.values()].map(({ cells, castes: those }) => ({
    name: shortName(scheme, taxon),
    castes: those
      .map((caste) => label(scheme, caste))
      .filter(Boolean)
      .join(", "),
    own: true,
    cells,
  }));
}

function lookAlike(scheme: Scheme, taxon: string, caste: string): Column {
  const possible = scheme.taxa.find(({ taxonID }) => taxonID === taxon)?.castes ?? [];
  const shown = possible.includes(caste) || possible.length === 0 ? caste : (possible[0] ?? "");
  return {
    name: shortName(scheme, taxon),
    castes: label(scheme, shown),
    own: false,
    cells: cellsOf(scheme, taxon, shown),
  };
}

/** The usual form of a caste, by part; a state given for that caste stands over one given for all. */
function cellsOf({ characters }: Scheme, taxon: string, caste: string): Column["cells"] {
  const cells: Column["cells"] = new Map();
  const rows = characters.filter(
    ({ taxonID, form, castes }) => taxonID === taxon && form === "" && (castes.length === 0 || castes.includes(caste)),
  );
  for (const { part, state, note, reliability, evidence } of rows.toSorted((a, b) => a.castes.length - b.castes.length))
    cells.set(part, { state, note, reliability, evidence });
  return cells;
}

function shortName({ taxa }: Scheme, taxon: string): string {
  const row = taxa.find(({ taxonID }) => taxonID === taxon);
  return row?.shortName || row?.scientificName || taxon;
}

function label({ settings }: Scheme, caste: string): string {
  return settings.castes.find(({ id }) => id === caste)?.label ?? "";
}
