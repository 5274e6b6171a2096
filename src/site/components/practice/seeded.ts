/**
 * Numbers from 0 up to 1 that follow from a seed alone: a linear congruence of 32 bits, of which the upper bits are
 * taken. Constants of Numerical Recipes, cited from memory; good enough to mix questions, for nothing else.
 *
 * @param seed whole number
 * @example seeded(1)() === seeded(1)() // true
 */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 0x1_0000_0000;
  };
}

/** The same items in another order. @example shuffled([1, 2, 3], seeded(7)).length // 3 */
export function shuffled<T>(items: readonly T[], random: () => number): T[] {
  const left = [...items];
  return items.flatMap(() => left.splice(Math.floor(random() * left.length), 1));
}
