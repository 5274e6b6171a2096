/**
 * Colours of hair, and for each those it is taken for: neighbours in hue or lightness, and what it fades to. White and
 * lemon bleach together; yellow and buff, red and ginger fall together for some eyes; ginger fades to straw. Written
 * from what is generally known of coats and of eyes, not fitted to any record.
 */
export const NEAR_STATES: ReadonlyMap<string, readonly string[]> = new Map([
  ["black", ["brown"]],
  ["yellow", ["lemon", "buff", "orange"]],
  ["lemon", ["yellow", "white", "buff"]],
  ["white", ["lemon", "buff", "grey"]],
  ["red", ["orange", "ginger"]],
  ["orange", ["red", "ginger", "yellow"]],
  ["buff", ["white", "yellow", "lemon", "ginger", "grey"]],
  ["ginger", ["orange", "brown", "buff", "red"]],
  ["brown", ["black", "ginger"]],
  ["grey", ["white", "buff"]],
  ["smoky", ["clear"]],
  ["clear", ["smoky"]],
  ["blue", ["green", "grey"]],
  ["green", ["blue", "bronze", "yellow"]],
  ["bronze", ["green", "brown"]],
]);

/** Pairs that are shades of one colour: nobody who has not both before the eyes knows which it is. */
const SHADES: readonly (readonly [string, string])[] = [
  ["yellow", "lemon"],
  ["red", "orange"],
];

/** The other shade of a colour. @example shadeOf("lemon") // "yellow" */
export function shadeOf(state: string): string | undefined {
  for (const [one, other] of SHADES) {
    if (state === one) return other;
    if (state === other) return one;
  }
  return undefined;
}
