import type { APIRoute } from "astro";
import { atlas } from "../published.ts";
import { schemeStyles } from "../scheme-styles.ts";

export const GET: APIRoute = () =>
  new Response(schemeStyles(atlas()), { headers: { "Content-Type": "text/css; charset=utf-8" } });
