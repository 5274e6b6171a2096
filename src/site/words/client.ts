/** Words of a page's script: the page carries its messages as data, in an element with the id `words`. */
import { formatMessage, type Values } from "./message.ts";

/** Says a message of the page by its key. */
export type Say = (key: string, values?: Values) => string;

/**
 * Reads the page's messages.
 *
 * @returns a function that says a message by its key; a key that is missing says itself
 * @example pageWords()("find.nothing", { text: "qq" }) // "Nothing found for “qq”."
 */
export function pageWords(): Say {
  const held = document.querySelector("#words")?.textContent ?? "{}";
  return sayFrom(JSON.parse(held) as Record<string, string>, document.documentElement.lang || "en-GB");
}

/**
 * Says messages that were fetched.
 *
 * @param messages by key, in ICU MessageFormat
 * @param language they are in
 * @example sayFrom({ "zoom.link": "Link to this view" }, "en-GB")("zoom.link") // "Link to this view"
 */
export function sayFrom(messages: Readonly<Record<string, string>>, language: string): Say {
  return (key, values) => formatMessage(messages[key] ?? key, language, values);
}
