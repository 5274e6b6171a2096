import type { APIRoute } from "astro";
import { entryWorkbook } from "../components/entry-sheet/entry-workbook.ts";
import { schemeSheet } from "../components/entry-sheet/scheme-sheet.ts";

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** The entry sheet as a workbook, in this language. */
export const GET: APIRoute = async () =>
  new Response(new Uint8Array(await entryWorkbook(schemeSheet())), { headers: { "Content-Type": XLSX } });
