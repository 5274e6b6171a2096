import type { APIRoute } from "astro";
import { searchFile } from "../components/find/search-entries.ts";

/** What can be found, in this language; the field asks for it when it is first entered. */
export const GET: APIRoute = () =>
  new Response(JSON.stringify(searchFile()), { headers: { "Content-Type": "application/json; charset=utf-8" } });
