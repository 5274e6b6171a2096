import type { APIRoute } from "astro";
import { bookFile } from "../book.ts";

export const GET: APIRoute = () =>
  new Response(JSON.stringify(bookFile()), { headers: { "Content-Type": "application/json; charset=utf-8" } });
