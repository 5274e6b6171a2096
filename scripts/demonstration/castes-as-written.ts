import type { Random } from "./random.ts";
import type { Sighting } from "./sightings.ts";
import type { Caste } from "./species.ts";

const SHORT: Readonly<Record<Caste, string>> = { queen: "q", worker: "w", male: "m", female: "f" };
const ORDER: readonly Caste[] = ["queen", "female", "worker", "male"];

/** What stands in one row: the caste as written and the number, either may be empty. */
export interface CasteCell {
  readonly counts: Sighting["counts"];
  readonly caste: string;
  readonly count: string;
}

/**
 * Splits a sighting into rows as recorders write castes: none at all, one row a caste, or one mixed text.
 *
 * @param writes probability that castes are written
 * @example casteCells({ queen: 1, worker: 3 }, 0, random) // [{ counts: { queen: 1, worker: 3 }, caste: "", count: "4" }]
 */
export function casteCells(counts: Sighting["counts"], writes: number, random: Random): CasteCell[] {
  const sum = Object.values(counts).reduce((all, one) => all + one, 0);
  const count = (number: number): string => (random.chance(0.55) ? String(number) : "");
  if (!random.chance(writes)) {
    return [{ counts, caste: "", count: count(sum) }];
  }
  const castes = ORDER.filter((caste) => counts[caste] !== undefined);
  if (castes.length > 1 && random.chance(0.3)) {
    return [{ counts, caste: mixedCastes(counts), count: String(sum) }];
  }
  return castes.map((caste) => {
    const number = counts[caste] as number;
    return { counts: { [caste]: number }, caste: random.chance(0.04) ? capital(caste) : caste, count: count(number) };
  });
}

/**
 * Castes in one text, as on a card.
 *
 * @example mixedCastes({ queen: 1, worker: 3, male: 1 }) // "1q 3w, m"
 */
export function mixedCastes(counts: Sighting["counts"]): string {
  return ORDER.filter((caste) => counts[caste] !== undefined)
    .map((caste) => (caste === "male" && counts[caste] === 1 ? ", m" : ` ${counts[caste]}${SHORT[caste]}`))
    .join("")
    .replace(/^[ ,]+/, "");
}

function capital(caste: string): string {
  return caste.charAt(0).toUpperCase() + caste.slice(1);
}
