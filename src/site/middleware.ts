import { defineMiddleware } from "astro:middleware";
import { hasEnglish, showEnglish } from "./words/fallback.ts";

/** Marks of English words become elements when a page is whole. */
export const onRequest = defineMiddleware(async (_, next) => {
  const response = await next();
  if (!(response.headers.get("Content-Type") ?? "").startsWith("text/html")) return response;
  const html = await response.text();
  return new Response(hasEnglish(html) ? showEnglish(html) : html, response);
});
