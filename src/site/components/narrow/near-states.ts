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
]);
