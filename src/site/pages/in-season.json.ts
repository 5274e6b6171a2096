import type { APIRoute } from "astro";
import { seasonFile } from "../components/season-here/season-taxa.ts";

/** Seasons of the taxa, for the script of the season lists. */
export const GET: APIRoute = () =>
  new Response(JSON.stringify(seasonFile()), { headers: { "Content-Type": "application/json; charset=utf-8" } });
