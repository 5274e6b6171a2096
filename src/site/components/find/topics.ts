import { FOOT_PLACES, MAIN_PLACES } from "../../layouts/places.ts";
import type { Key } from "../../words/catalogue.ts";

/** A page of the site that can be found by what it is about. */
export interface Topic {
  readonly path: string;
  /** Its name. */
  readonly words: Key;
  /** Other words for it, parted by a bar. */
  readonly also: Key;
}

const TOPICS: readonly Topic[] = [
  { path: "species/", words: "layout.species", also: "find.also.species" },
  { path: "squares/", words: "layout.squares", also: "find.also.squares" },
  { path: "coverage/", words: "layout.coverage", also: "find.also.coverage" },
  { path: "methods/", words: "layout.methods", also: "find.also.methods" },
  { path: "downloads/", words: "layout.downloads", also: "find.also.downloads" },
  { path: "in-season/", words: "in-season.title", also: "find.also.season" },
  { path: "take-part/", words: "take-part.title", also: "find.also.take-part" },
];

/** Words for pages that other parts of the site may have; each counts where the page is in the head or the foot. */
const ALSO: Readonly<Record<string, Key>> = {
  "narrow/": "find.also.narrow",
  "tell-apart/": "find.also.tell-apart",
  "practice/": "find.also.practice",
  "squares/wanted/": "find.also.wanted",
  "credits/": "find.also.credits",
  "design/": "find.also.design",
};

/**
 * The pages that can be found by their subject, those of the head and the foot among them.
 *
 * @example topics()[0]?.path // "species/"
 */
export function topics(): Topic[] {
  const known = new Set(TOPICS.map(({ path }) => path));
  const linked = [...MAIN_PLACES, ...FOOT_PLACES].flatMap(({ path, words }) => {
    const also = ALSO[path];
    return known.has(path) || also === undefined ? [] : [{ path, words, also }];
  });
  const once = new Map(linked.map((topic) => [topic.path, topic]));
  return [...TOPICS, ...once.values()];
}
