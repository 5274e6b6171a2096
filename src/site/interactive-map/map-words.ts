import { type Say, sayFrom } from "../words/client.ts";

/** `map-words.json` of a language. */
export interface FetchedMapWords {
  readonly language: string;
  readonly messages: Readonly<Record<string, string>>;
  /** Names of the taxa by slug. */
  readonly names: Readonly<Record<string, string>>;
  /** What many of the animals are called. */
  readonly group: string;
}

/** What the map says, and what it calls things. */
export interface MapWords {
  readonly say: Say;
  readonly nameOf: (slug: string) => string;
  readonly group: string;
}

/** Fetches the words of the page's language. @throws {Error} where they cannot be fetched */
export async function fetchMapWords(base: string): Promise<MapWords> {
  const answer = await fetch(`${base}map-words.json`);
  if (!answer.ok) throw new Error("its words could not be fetched");
  const { messages, language, names, group } = (await answer.json()) as FetchedMapWords;
  return { say: sayFrom(messages, language), nameOf: (slug) => names[slug] ?? slug, group };
}
