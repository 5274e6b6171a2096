import type { APIRoute } from "astro";
import type { FetchedMapWords } from "../interactive-map/map-words.ts";
import { atlas } from "../published.ts";
import { language, messagesFor } from "../words/say.ts";

/** What the interactive map says, in the language of the pages: it is fetched with the map. */
export const GET: APIRoute = () => {
  const { taxa, group } = atlas();
  const words: FetchedMapWords = {
    language: language(),
    messages: messagesFor(["zoom."]),
    names: Object.fromEntries(taxa.map(({ slug, vernacular_name }) => [slug, vernacular_name])),
    group: group.many,
  };
  return new Response(JSON.stringify(words), { headers: { "Content-Type": "application/json; charset=utf-8" } });
};
