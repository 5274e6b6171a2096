/** Why a taxon stands on a field card where it stands. */
export type CardGroup = "recorded" | "expected" | "rest";

/** A row of a field card: a taxon by its slug. */
export interface CardRow {
  readonly slug: string;
  readonly group: CardGroup;
}

/** Rows that fit on a sheet of A4 with its head and foot. */
export const MOST_ROWS = 28;

/**
 * Taxa of a field card: those recorded in the place, then those expected, then the rest of the list, each once.
 *
 * @param all slugs of the atlas, in the order of its list
 * @param recorded slugs of the place, in their order
 * @param expected slugs expected there, likeliest first
 * @param most rows
 * @returns rows, and how many of the list are left out
 * @example cardRows(["a", "b", "c"], ["b"], ["c"]) // => { rows: [{ slug: "b", group: "recorded" }, { slug: "c", group: "expected" }, { slug: "a", group: "rest" }], left: 0 }
 */
export function cardRows(
  all: readonly string[],
  recorded: readonly string[],
  expected: readonly string[],
  most: number = MOST_ROWS,
): { rows: CardRow[]; left: number } {
  const rows = new Map<string, CardGroup>();
  for (const [group, slugs] of [
    ["recorded", recorded],
    ["expected", expected],
    ["rest", all],
  ] as const)
    for (const slug of slugs) if (!rows.has(slug)) rows.set(slug, group);
  const told = [...rows].map(([slug, group]) => ({ slug, group }));
  return { rows: told.slice(0, most), left: Math.max(0, told.length - most) };
}
