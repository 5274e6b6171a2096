/** Beginnings of the keys that the script of the season lists says. */
export const SEASON_WORDS: readonly string[] = [
  ...[
    "now",
    "note-",
    "eight",
    "near",
    "here",
    "none",
    "no-square",
    "not-a-place",
    "outside",
    "no-location",
    "failed",
  ].map((part) => `in-season.${part}`),
  "text.third",
  "text.span",
];
