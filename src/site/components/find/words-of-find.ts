/** Beginnings of the keys that the field's script says. */
export const FIND_WORDS: readonly string[] = [
  "count",
  "many",
  "nothing",
  "no-square",
  "outside",
  "failed",
  "kind.",
  "why.",
].map((part) => `find.${part}`);
