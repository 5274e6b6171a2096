import type { APIRoute } from "astro";
import { atlas } from "../published.ts";

export const GET: APIRoute = () => {
  const entries = atlas().taxa.flatMap(({ slug, vernacular_name, scientific_name }) =>
    [...new Set([vernacular_name, scientific_name])].map((name) => ({ name, slug })),
  );
  return new Response(JSON.stringify(entries), { headers: { "Content-Type": "application/json; charset=utf-8" } });
};
