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
  const messages = JSON.parse(held) as Record<string, string>;
  const language = document.documentElement.lang || "en-GB";
  return (key, values) => formatMessage(messages[key] ?? key, language, values);
}
