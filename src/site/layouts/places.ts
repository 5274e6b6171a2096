import type { Key } from "../words/catalogue.ts";

/** A part of the site that every page links to. */
export interface Place {
  readonly path: string;
  readonly words: Key;
}

/** Places in the head of every page, in their order. */
export const MAIN_PLACES: readonly Place[] = [
  { path: "species/", words: "layout.species" },
  { path: "tell-apart/", words: "layout.tell-apart" },
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

/**
 * Whether the head or the foot links to a page: a part that a site may lack is linked to from other pages only then.
 *
 * @example isPlace("species/") // true
 */
export function isPlace(path: string): boolean {
  return [...MAIN_PLACES, ...FOOT_PLACES].some((place) => place.path === path);
}
