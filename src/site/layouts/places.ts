import type { Key } from "../words/catalogue.ts";

/** A part of the site that every page links to. */
export interface Place {
  readonly path: string;
  readonly words: Key;
}

/** Places in the head of every page, in their order. */
export const MAIN_PLACES: readonly Place[] = [
  { path: "species/", words: "layout.species" },
  { path: "squares/", words: "layout.squares" },
  { path: "coverage/", words: "layout.coverage" },
  { path: "methods/", words: "layout.methods" },
  { path: "downloads/", words: "layout.downloads" },
];

/** Places in the foot of every page, before the scheme's own pages. */
export const FOOT_PLACES: readonly Place[] = [
  { path: "methods/", words: "layout.methods" },
  { path: "coverage/", words: "layout.coverage" },
  { path: "downloads/", words: "layout.downloads" },
];
