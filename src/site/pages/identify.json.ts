import type { APIRoute } from "astro";
import { identifyTaxa } from "../components/identify/gather-identify-taxa.ts";

export const GET: APIRoute = () =>
  new Response(JSON.stringify(identifyTaxa()), { headers: { "Content-Type": "application/json; charset=utf-8" } });
