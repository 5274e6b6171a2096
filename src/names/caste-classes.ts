/** One class of the vocabulary of castes, sexes and stages. */
export interface CasteClass {
  readonly id: string;
  readonly label: string;
  /** What people write for it, singular and plural: "queen", "queens", "q", "gyne", "♀". Case makes no difference. */
  readonly words: readonly string[];
  /**
   * The wider class this one is part of; stated together they are no contradiction. Left out, "queen" and "worker"
   * lie within "female" where the vocabulary has that class, as in bees, wasps and ants.
   */
  readonly within?: string;
}

/** The words of a scheme. */
export interface CasteVocabulary {
  readonly classes: readonly CasteClass[];
  /** Words that say nothing of caste and are no mistake: "adult", "imago". */
  readonly ignored?: readonly string[];
}

const USUALLY_FEMALE = new Set(["queen", "worker"]);

/** How many of one class a record is of; `count` undefined where no number is written. */
export interface CasteCount {
  readonly caste: string;
  readonly count: number | undefined;
}

/**
 * Joins what two terms say of the same individuals, the finer class counting; undefined when they contradict each
 * other. A number stands with the finer class when only one of the two has it.
 *
 * @example joinCounts([{ caste: "worker", count: undefined }], [{ caste: "female", count: 2 }], vocabulary) // [{ caste: "worker", count: 2 }]
 */
export function joinCounts(
  counts: readonly CasteCount[],
  others: readonly CasteCount[],
  vocabulary: CasteVocabulary,
): CasteCount[] | undefined {
  if (counts.length === 0) return [...others];
  if (others.length === 0) return [...counts];
  const isPartOf = (finer: string, wider: string): boolean =>
    finer === wider || widerThan(finer, vocabulary).includes(wider);
  const fits = (fine: readonly CasteCount[], wide: readonly CasteCount[]): boolean =>
    fine.every((one) => wide.some((other) => isPartOf(one.caste, other.caste))) &&
    wide.every((one) => fine.some((other) => isPartOf(other.caste, one.caste)));
  const [finer, wider] = fits(counts, others) ? [counts, others] : [others, counts];
  if (!fits(finer, wider)) return undefined;
  const [only, widerOnly] = [finer[0], wider[0]];
  if (finer.length === 1 && wider.length === 1 && only !== undefined)
    return [{ caste: only.caste, count: only.count ?? widerOnly?.count }];
  return [...finer];
}

/**
 * Every class that a class is part of, nearest first.
 *
 * @example widerThan("worker", vocabulary) // ["female"]
 */
export function widerThan(id: string, { classes }: CasteVocabulary): string[] {
  const wider: string[] = [];
  for (let next = within(id, classes); next !== undefined && !wider.includes(next); next = within(next, classes))
    wider.push(next);
  return wider;
}

function within(id: string, classes: readonly CasteClass[]): string | undefined {
  const given = classes.find((one) => one.id === id)?.within;
  if (given !== undefined) return given;
  return USUALLY_FEMALE.has(id) && classes.some((one) => one.id === "female") ? "female" : undefined;
}
