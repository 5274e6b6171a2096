/**
 * Catalogues of the site's words: one folder a language, one file a topic, keys `topic.what`. Each message is written in
 * ICU MessageFormat, with `**…**` round what is set bold, and names in angle brackets round what the page makes a link.
 * English is the catalogue the others are held against: a complete one `satisfies WordsOf<…>` of each topic.
 */
import en from "./en/index.ts";
import fr from "./fr/index.ts";
import { frenchSpaces } from "./french-spaces.ts";
import ga from "./ga/index.ts";

/** A key of the English catalogue, and so of all. */
export type Key = keyof typeof en;

/** Every message of a topic in another language. */
export type WordsOf<English> = { readonly [Each in keyof English]: string };

/** Some messages of a topic: those that are missing are shown in English, and marked so. */
export type SomeWordsOf<English> = { readonly [Each in keyof English]?: string };

/** Catalogues by language, without region. */
export const CATALOGUES: Readonly<Record<string, Readonly<Partial<Record<Key, string>>>>> = {
  en,
  fr: /* @__PURE__ */ frenchSpaces(fr),
  ga,
};

/** English, which has every message. */
export const ENGLISH: Readonly<Record<Key, string>> = en;
