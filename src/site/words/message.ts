/** Formats one message. Runs in the build and in the browser, so it knows no catalogue. */
import { type Formatters, IntlMessageFormat } from "intl-messageformat";
import { numberText } from "./number-format.ts";

/** What stands for a name in braces; `{n, number}` groups a number as the language does, `{n}` does not. */
export type Values = Readonly<Record<string, string | number>>;
/** What is made of the text between a name in angle brackets and its closing. */
export type Tags = Readonly<Record<string, (text: string) => string>>;

/** Read messages of one language, with tags and without: the texts themselves are the keys, since joining them costs. */
interface ReadMessages {
  readonly tagged: Map<string, IntlMessageFormat>;
  readonly plain: Map<string, IntlMessageFormat>;
}
const made = new Map<string, ReadMessages>();

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
  const format = readMessage(message, language, tags !== undefined);
  let given: Record<string, unknown> = values;
  if (tags !== undefined) {
    given = { ...values };
    for (const [name, make] of Object.entries(tags)) given[name] = (parts: readonly unknown[]) => make(parts.join(""));
  }
  const said: unknown = format.format(given as Parameters<typeof format.format>[0]);
  return spaced(Array.isArray(said) ? said.join("") : String(said), language);
}

/**
 * French puts a space that does not break before : ; ? ! % and inside its quotation marks; catalogues and accounts write a
 * plain one. Texts of other languages stay as they are.
 *
 * @param text words, or a whole page
 * @example spaced("Pas vu ?", "fr") // "Pas vu\u00a0?"
 */
export function spaced(text: string, language: string): string {
  if (!/^fr\b/.test(language)) return text;
  return text.replace(/ ([:;?!%»])/g, "\u00a0$1").replace(/« /g, "«\u00a0");
}

function readMessage(message: string, language: string, hasTags: boolean): IntlMessageFormat {
  const own = made.get(language) ?? { tagged: new Map(), plain: new Map() };
  made.set(language, own);
  const read = hasTags ? own.tagged : own.plain;
  const known = read.get(message);
  if (known !== undefined) return known;
  const options = { ignoreTag: !hasTags, formatters: formattersOf(language) };
  const format = new IntlMessageFormat(message, language, undefined, options);
  read.set(message, format);
  return format;
}

const formatters = new Map<string, Formatters>();

/** One set of formatters a language: pages say millions of numbers, and the library would ask its memory for each. */
function formattersOf(language: string): Formatters {
  const known = formatters.get(language);
  if (known !== undefined) return known;
  const plain = numberText(language) as Intl.NumberFormat;
  const [cardinal, ordinal] = [
    new Intl.PluralRules(language),
    new Intl.PluralRules(language, { type: "ordinal" }),
  ] as const;
  const own: Formatters = {
    getNumberFormat: (locales, options) =>
      options === undefined || Object.keys(options).length === 0 ? plain : new Intl.NumberFormat(locales, options),
    getDateTimeFormat: (...given) => new Intl.DateTimeFormat(...given),
    getPluralRules: (_, options) => (options?.type === "ordinal" ? ordinal : cardinal),
  };
  formatters.set(language, own);
  return own;
}
