import { atlas, regions, squares, taxon } from "../../published.ts";
import { withoutMarks } from "../../words/fallback.ts";
import { language, say } from "../../words/say.ts";
import { markedAs } from "./marked-as.ts";
import { packSquares, type SearchEntry, type SearchFile, type SearchName } from "./search-file.ts";
import { topics } from "./topics.ts";

/** What can be found, in the language of the build. @example searchFile().entries.length // 104 */
export function searchFile(): SearchFile {
  const entries = [taxonEntries(), outsideEntries(), firstSeenEntries(), regionEntries(), pageEntries()].flat();
  return {
    entries: entries.map(spoken),
    squares: packSquares(squares().squares.map(({ square }) => square)),
    grids: [...new Set(atlas().territories.map(({ grid }) => grid))],
  };
}

/** The entry with the language of its title apart from it: names that a language lacks are marked as those of another. */
function spoken({ title, names, ...entry }: SearchEntry): SearchEntry {
  const tag = markedAs(title);
  return {
    ...entry,
    title: withoutMarks(title),
    ...(tag === undefined ? {} : { language: tag }),
    names: distinct(
      names.map(([text, kind, own]): SearchName => {
        const language = own ?? markedAs(text);
        return language === undefined ? [withoutMarks(text), kind] : [withoutMarks(text), kind, language];
      }),
    ),
  };
}

/** The most recorded first: of names that fit as well, the likelier stands first. */
function taxonEntries(): SearchEntry[] {
  return [...atlas().taxa]
    .sort((one, other) => other.records - one.records)
    .map(({ slug, vernacular_name, short_name, scientific_name, vernacular_names, is_aggregate }) => ({
      kind: is_aggregate ? "group" : "species",
      path: `species/${slug}/`,
      title: vernacular_name,
      names: [
        [vernacular_name, "own"],
        [short_name, "own"],
        [scientific_name, "scientific"],
        ...vernaculars(vernacular_names),
        ...taxon(slug).synonyms.map((name): SearchName => [name, "synonym"]),
      ],
    }));
}

function outsideEntries(): SearchEntry[] {
  return atlas().outside.map(({ slug, vernacular_name, short_name, scientific_name, vernacular_names, kind }) => ({
    kind: "outside",
    path: `tell-apart/outside/#${slug}`,
    title: vernacular_name,
    names: [
      [vernacular_name, "own"],
      [short_name, "own"],
      [scientific_name, "scientific"],
      ...vernaculars(vernacular_names),
      [kind, "topic"],
    ],
  }));
}

/** Names of every language; those of another than the page's say which. */
function vernaculars(names: readonly { name: string; language: string }[]): SearchName[] {
  const own = language().split("-")[0];
  return names.map(({ name, language: tag }) => {
    return tag === "" || tag.split("-")[0] === own ? [name, "vernacular"] : [name, "vernacular", tag];
  });
}

function firstSeenEntries(): SearchEntry[] {
  return atlas().first_seen_groups.map(({ id, title }) => ({
    kind: "first-seen",
    path: `#look-${id}`,
    title,
    names: [[title, "own"]],
  }));
}

function regionEntries(): SearchEntry[] {
  return regions().layers.flatMap(({ regions: list }) =>
    list.map(({ slug, name, code }) => ({
      kind: "region",
      path: `regions/${slug}/`,
      title: name,
      names: [
        [name, "own"],
        [code, "own"],
      ],
    })),
  );
}

function pageEntries(): SearchEntry[] {
  const ours = topics().map(({ path, words, also }): SearchEntry => {
    const others = withoutMarks(say(also)).split("|");
    const title = withoutMarks(say(words));
    return {
      kind: "page",
      path,
      title,
      names: [[title, "own"], ...others.map((name): SearchName => [name.trim(), "topic"])],
    };
  });
  const theirs = atlas().pages.map(
    ({ slug, title }): SearchEntry => ({ kind: "page", path: `${slug}/`, title, names: [[title, "own"]] }),
  );
  return [...ours, ...theirs];
}

/** The first of names that are written alike; none that are empty. */
function distinct(names: readonly SearchName[]): SearchName[] {
  const byText = new Map<string, SearchName>();
  for (const name of names)
    if (name[0] !== "" && !byText.has(name[0].toLowerCase())) byText.set(name[0].toLowerCase(), name);
  return [...byText.values()];
}
