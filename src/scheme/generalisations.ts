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
