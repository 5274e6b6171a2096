import { marksBefore } from "../../words/fallback.ts";

/**
 * The language some words are marked as, where they begin with a mark; of several the innermost.
 *
 * @example markedAs(markEnglish("Season")) // "en"
 */
export function markedAs(text: string): string | undefined {
  return text
    .slice(0, marksBefore(text))
    .match(/[A-Za-z0-9-]+/g)
    ?.at(-1);
}
