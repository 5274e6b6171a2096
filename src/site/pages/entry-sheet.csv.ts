import type { APIRoute } from "astro";
import { entrySheetText } from "../components/entry-sheet/entry-sheet.ts";
import { atlas } from "../published.ts";
import { language } from "../words/say.ts";

/** The entry sheet as text, in the form of this language. */
export const GET: APIRoute = () => {
  const text = entrySheetText(
    atlas().castes.map(({ id }) => id),
    language(),
  );
  return new Response(text, { headers: { "Content-Type": "text/csv; charset=utf-8" } });
};
