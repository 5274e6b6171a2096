import { atlas, squares } from "../../published.ts";
import type { Key } from "../../words/catalogue.ts";
import { withoutMarks } from "../../words/fallback.ts";
import { language, say } from "../../words/say.ts";
import { starterTaxa } from "../take-part/places-to-start.ts";
import type { SheetContent, SheetWords } from "./entry-sheet.ts";
import { sheetColumns } from "./sheet-columns.ts";

/** The entry sheet of the atlas, in the language of the build. @example schemeSheet().castes // ["queen", "worker", "male"] */
export function schemeSheet(): SheetContent {
  const { title, invented, edition, castes } = atlas();
  const parts = new Set(starterTaxa().flatMap(({ characters }) => characters.map(({ part }) => part)));
  const words = sheetWords();
  return {
    title: said("entry-sheet.title", { title }),
    invented: invented ? said("entry-sheet.invented", { title }) : "",
    edition,
    names: namesToWrite(),
    castes: castes.map(({ id }) => id),
    parts: [...parts].filter((part) => !NOT_SEEN.has(part)),
    about: aboutLines(words),
    words,
  };
}

/** Characters that are no part of the body. */
const NOT_SEEN = new Set(["size", "coat", "voice"]);

/** Vernacular names of the page's language, then scientific names, each in the order of its letters. */
function namesToWrite(): SheetContent["names"] {
  const pairs = atlas().taxa.map(({ vernacular_name, scientific_name }) => ({
    vernacular: withoutMarks(vernacular_name),
    scientific: scientific_name,
  }));
  const collator = new Intl.Collator(language());
  const sorted = (names: { write: string; called: string }[]) =>
    names.toSorted((one, other) => collator.compare(one.write, other.write));
  return [
    ...sorted(
      pairs
        .filter(({ vernacular, scientific }) => vernacular !== scientific)
        .map(({ vernacular, scientific }) => ({ write: vernacular, called: scientific })),
    ),
    ...sorted(
      pairs.map(({ vernacular, scientific }) => ({
        write: scientific,
        called: vernacular === scientific ? "" : vernacular,
      })),
    ),
  ];
}

function aboutLines({ sheets }: SheetWords): string[] {
  const { title, invented, edition, sending } = atlas();
  const address = sending.email || sending.url;
  return [
    ...(invented ? [said("entry-sheet.invented", { title })] : []),
    said("entry-sheet.fill", sheets),
    ...(address === "" ? [] : [said("entry-sheet.send", { address })]),
    said("entry-sheet.edition", { edition: edition.id }),
  ];
}

function sheetWords(): SheetWords {
  const { castes } = atlas();
  const [first] = [...squares().squares].sort((one, other) => other.records - one.records);
  const square = first?.square ?? "";
  const ids = castes.map(({ id, label }) => {
    const shown = withoutMarks(label).toLocaleLowerCase();
    return shown === id ? id : `${id} (${shown})`;
  });
  const example = castes
    .slice(0, 2)
    .map(({ id }, index) => `${index + 1} ${id}`)
    .join(", ");
  const values = { example: square, castes: ids.join(", ") };
  const holds = sheetColumns(castes.map(({ id }) => id)).map(({ term }) => [
    term,
    said(`entry-sheet.${term}`, term === "caste" ? { ...values, example } : values),
  ]);
  return {
    sheets: {
      records: said("entry-sheet.records"),
      columns: said("entry-sheet.columns"),
      names: said("entry-sheet.names"),
      about: said("entry-sheet.about"),
    },
    heads: {
      column: said("entry-sheet.column"),
      holds: said("entry-sheet.holds"),
      needed: said("entry-sheet.needed"),
      yes: said("entry-sheet.yes"),
      write: said("entry-sheet.name-to-write"),
      called: said("entry-sheet.name-called"),
    },
    holds: Object.fromEntries(holds) as SheetWords["holds"],
    otherName: said("entry-sheet.other-name"),
    otherValue: said("entry-sheet.other-value"),
    whole: said("entry-sheet.whole"),
  };
}

/** Words without the marks of another language, which a cell cannot show. */
function said(key: Key, values: Record<string, string> = {}): string {
  return withoutMarks(say(key, values));
}
