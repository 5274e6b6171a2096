/** What the list of sensitive taxa means for each taxon of the checklist. */
import type { Checklist } from "../names/checklist.ts";
import { LEVELS, type Level, type SensitiveRow } from "./sensitive-list.ts";
import type { Settings } from "./settings.ts";

/** One entry of the list, as it bears on one taxon. */
export interface Generalisation {
  entry: SensitiveRow;
  /** Whether it is about the taxon itself, and not only about a member of it. */
  own: boolean;
  /** Whether it is about the taxon's every record. */
  whole: boolean;
}

interface Listed {
  sensitive: readonly SensitiveRow[];
  checklist: Pick<Checklist, "descendants">;
}

/** The taxa whose records an entry is about: the one it names and all its members. */
export function taxaOfEntry({ taxonID }: SensitiveRow, checklist: Listed["checklist"]): string[] {
  return [taxonID, ...checklist.descendants(taxonID)];
}

/**
 * The entries that bear on what is shown of a taxon. A record of a member counts for every group above it, so that an
 * entry about a member bears on the group too.
 *
 * @returns entries in the list's order; none where every record is shown as it is known
 */
export function generalisationsOf({ sensitive, checklist }: Listed, taxonId: string): Generalisation[] {
  const counted = [taxonId, ...checklist.descendants(taxonId)];
  return sensitive.flatMap((entry) => {
    const about = taxaOfEntry(entry, checklist);
    const own = about.includes(taxonId);
    if (!own && !counted.some((id) => about.includes(id))) return [];
    return [{ entry, own, whole: own && !isScoped(entry) }];
  });
}

/** The level of a taxon's every record; null where all or some are shown as they are known. */
export function levelOf(generalisations: readonly Generalisation[]): Level | null {
  return coarsest(generalisations.filter(({ whole }) => whole).map(({ entry }) => entry.level));
}

/** The coarsest of some levels; null of none. @example coarsest(["2 km", "10 km"]) // => "10 km" */
export function coarsest(levels: readonly Level[]): Level | null {
  return LEVELS.findLast((level) => levels.includes(level)) ?? null;
}

/**
 * Why change of a taxon cannot be judged at a resolution in a territory: the squares of that size lack its hidden records.
 * Entries for castes, stages and months are left to the page's words: most of the taxon's records are there.
 *
 * @returns empty where nothing is hidden there
 * @example hiddenAt({ resolution_m: 2_000, territory: "all" }, generalisations) // => "its records are shown at 10 km"
 */
export function hiddenAt(
  { resolution_m, territory }: { resolution_m: number; territory: string },
  generalisations: readonly Generalisation[],
): string {
  const bearing = generalisations.filter(
    ({ own, entry: { level, castes, months, territories } }) =>
      own &&
      (level === "withheld" || (level === "10 km" && resolution_m < 10_000)) &&
      castes.length + months.length === 0 &&
      (territories.length === 0 || territory === "all" || territories.includes(territory)),
  );
  const level = coarsest(bearing.map(({ entry }) => entry.level));
  if (level === null) return "";
  const some = bearing.some(({ whole }) => whole) || territory !== "all" ? "" : "some of ";
  return level === "withheld" ? `${some}its places are withheld` : `${some}its records are shown at ${level}`;
}

function isScoped({ territories, castes, months }: SensitiveRow): boolean {
  return territories.length + castes.length + months.length > 0;
}

const MONTHS = "January February March April May June July August September October November December".split(" ");

/**
 * Which records of its taxon an entry is about, in words.
 *
 * @returns empty where it is about all
 * @example scopeInWords({ territories: ["ireland"], castes: ["queen"], months: [5, 6] }, settings) // => "Ireland; queen; May, June"
 */
export function scopeInWords(
  { territories, castes, months }: Pick<SensitiveRow, "territories" | "castes" | "months">,
  settings: Pick<Settings, "territories" | "castes">,
): string {
  const named = (ids: readonly string[], names: readonly { id: string; name: string }[]) =>
    ids.map((id) => names.find((one) => one.id === id)?.name ?? "not stated").join(", ");
  return [
    named(territories, settings.territories),
    named(
      castes,
      settings.castes.map(({ id, label }) => ({ id, name: label.toLowerCase() })),
    ),
    months.map((month) => MONTHS[month - 1]).join(", "),
  ]
    .filter(Boolean)
    .join("; ");
}
