import { slugOf } from "./slug.ts";

/**
 * The id of an account's section, by its heading in the atlas's first language. Some have a place of their own on the page.
 *
 * @example sectionId("How to know it") // => "know"
 */
export function sectionId(title: string): string {
  const slug = slugOf(title) || "text";
  return slug === "how-to-know-it" ? "know" : slug;
}
