/** Formats one message. Runs in the build and in the browser, so it knows no catalogue. */
import { IntlMessageFormat } from "intl-messageformat";

/** What stands for a name in braces; numbers are grouped as the language does. */
export type Values = Readonly<Record<string, string | number>>;
/** What is made of the text between a name in angle brackets and its closing. */
export type Tags = Readonly<Record<string, (text: string) => string>>;

const made = new Map<string, IntlMessageFormat>();

/**
 * A message with its values, in the plural, order and figures of a language.
 *
 * @param message in ICU MessageFormat
 * @param language BCP 47 tag
 * @param values of the names in braces
 * @param tags what becomes of tagged text; without it angle brackets are text
 * @throws Error on a message that is no ICU message, or a value it asks for that is not given
 * @example formatMessage("{n, plural, one {# square} other {# squares}}", "en-GB", { n: 1379 }) // "1,379 squares"
 */
export function formatMessage(message: string, language: string, values: Values = {}, tags?: Tags): string {
  const key = `${language} ${tags === undefined ? "" : "tags"} ${message}`;
  const format =
    made.get(key) ?? new IntlMessageFormat(message, language, undefined, { ignoreTag: tags === undefined });
  made.set(key, format);
  const given: Record<string, unknown> = { ...values };
  for (const [name, make] of Object.entries(tags ?? {}))
    given[name] = (parts: readonly unknown[]) => make(parts.join(""));
  const said: unknown = format.format(given as Parameters<typeof format.format>[0]);
  return Array.isArray(said) ? said.join("") : String(said);
}
