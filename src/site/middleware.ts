import { defineMiddleware } from "astro:middleware";
import { hasMarks, showMarks, withoutMarks } from "./words/fallback.ts";
import { language } from "./words/language.ts";
import { spaced } from "./words/message.ts";

/** Types that are text; the type of a workbook has "xml" in its name and is not. */
const IS_TEXT = /^text\/|^[\w.-]+\/(?:[\w.-]+\+)?(?:json|xml|javascript)(?:$|[;\s])/;

/** Marks of words of another language become elements when a page is whole, and go from every other text. */
export const onRequest = defineMiddleware(async (_, next) => {
  const response = await next();
  const type = response.headers.get("Content-Type") ?? "";
  if (!IS_TEXT.test(type)) return response;
  const isPage = type.startsWith("text/html");
  // A scheme types its accounts and pages with plain spaces, as the catalogues are typed.
  const text = isPage ? spaced(await response.text(), language()) : await response.text();
  if (!hasMarks(text)) return new Response(text, response);
  return new Response(isPage ? showMarks(text) : withoutMarks(text), response);
});
