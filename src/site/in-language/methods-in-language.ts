import type { AtlasFile } from "../../publishing/contracts.ts";
import { longDate } from "../components/text/thirds.ts";
import { isPublishedText, sayPublished } from "../words/published-text.ts";
import { type PageLanguage, wordsIn } from "./page-language.ts";
import { scopeIn } from "./scope-in-language.ts";

type Values = AtlasFile["methods"][number]["values"];
type Both = { shown: AtlasFile; published: AtlasFile };

/** What values of a name are, in the language of the pages; others are the same in all. */
const IN_LANGUAGE: Readonly<Record<string, (text: string, page: PageLanguage, both: Both) => string>> = {
  date: (text) => longDate(text).replaceAll(" ", "\u00a0"),
  grid: sayPublished,
  group: (text, page, { shown, published }) =>
    text === published.group.one
      ? shown.group.one
      : text === published.group.many
        ? shown.group.many
        : wordsIn(page, "", text),
  periods: (_, __, { shown }) => shown.periods.map(({ label }) => label).join(", "),
  reason: (text, page) => (isPublishedText(text) ? sayPublished(text) : wordsIn(page, "", text)),
  scope: (text, page, both) => (text === "none" ? text : scopeIn(page, text, both)),
  taxon: (text, page, { shown, published }) => {
    const place = published.taxa.findIndex(({ vernacular_name }) => vernacular_name === text);
    return shown.taxa[place]?.vernacular_name ?? wordsIn(page, "", text);
  },
  territory: (text, _, { shown, published }) => {
    const place = published.territories.findIndex(({ name }) => name === text);
    return shown.territories[place]?.name ?? text;
  },
};

/**
 * The statements of the methods page, with what is put into their words in the language of the pages.
 *
 * @param both the atlas in the language of the pages, and as published
 */
export function methodsIn(page: PageLanguage, both: Both): AtlasFile["methods"] {
  return both.published.methods.map((statement) => ({ ...statement, values: valuesIn(page, statement.values, both) }));
}

function valuesIn(page: PageLanguage, values: Values, both: Both): Values {
  const said = Object.entries(values).map(([name, value]): [string, Values[string]] => {
    if (typeof value === "number") return [name, value];
    if (typeof value === "string") return [name, IN_LANGUAGE[name]?.(value, page, both) ?? value];
    return [name, { ...value, values: valuesIn(page, value.values, both) as typeof value.values }];
  });
  return Object.fromEntries(said);
}
