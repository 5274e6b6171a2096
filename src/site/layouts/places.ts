import type { Key } from "../words/catalogue.ts";

/** A part of the site that every page links to. */
export interface Place {
  readonly path: string;
  readonly words: Key;
}

/** Places in the head of every page, in their order. */
export const MAIN_PLACES: readonly Place[] = [
  { path: "species/", words: "layout.species" },
  { path: "narrow/", words: "narrow.place" },
  { path: "tell-apart/", words: "layout.tell-apart" },
  { path: "squares/", words: "layout.squares" },
  { path: "take-part/", words: "take-part.title" },
  { path: "find/", words: "find.title" },
];

/** Places in the foot of every page, before the scheme's own pages. */
export const FOOT_PLACES: readonly Place[] = [
  { path: "practice/", words: "layout.practice" },
  { path: "methods/", words: "layout.methods" },
  { path: "map/", words: "zoom.title" },
  { path: "coverage/", words: "layout.coverage" },
  { path: "squares/wanted/", words: "wanted.title" },
  { path: "downloads/", words: "layout.downloads" },
  { path: "credits/", words: "media.title" },
  { path: "design/", words: "design.title" },
];

/**
 * The place of a path in the head or the foot: a part that a site may lack is linked to from other pages only where it
 * has one.
 *
 * @example placeOf("species/")?.words // "layout.species"
 */
export function placeOf(path: string): Place | undefined {
  return [...MAIN_PLACES, ...FOOT_PLACES].find((place) => place.path === path);
}
