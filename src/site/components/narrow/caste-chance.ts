/** How often the caste people name is not the animal's: once in ten, since workers of late summer are as large as queens. */
export const CASTE_WRONG = 0.1;
/** Castes that are female: of an animal of one of these, "female" is right too, and a female may be called either. */
const FEMALE = new Set(["queen", "worker", "female"]);

/**
 * The chance that an animal of a caste is said to be of another.
 *
 * @param said undefined where nothing was said
 * @param caste of the hypothesis; empty where the taxon has none, and then what was said tells nothing
 * @returns relative to other castes; 1 where nothing was said
 * @example casteChance("queen", "queen") // 0.9
 * @example casteChance("female", "worker") // 0.9
 * @example casteChance("queen", "female") // 0.5: a cuckoo's female looks like a queen
 */
export function casteChance(said: string | undefined, caste: string): number {
  if (said === undefined || caste === "") return said === undefined ? 1 : 0.5;
  if (said === caste || (said === "female" && FEMALE.has(caste))) return 1 - CASTE_WRONG;
  return caste === "female" && FEMALE.has(said) ? 0.5 : CASTE_WRONG;
}
