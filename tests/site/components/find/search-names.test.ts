import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readScheme } from "../../../../src/scheme/scheme.ts";
import { folded } from "../../../../src/site/components/find/fold.ts";
import type { SearchEntry, SearchName } from "../../../../src/site/components/find/search-file.ts";
import { clearAnswer, indexNames, search } from "../../../../src/site/components/find/search-names.ts";

const ENTRIES: SearchEntry[] = readScheme("content").taxa.map(
  ({ taxonID, scientificName, vernacularNames, shortName, synonyms, taxonRank }) => ({
    kind: taxonRank === "speciesAggregate" ? "group" : "species",
    path: `species/${taxonID.replace("invented-", "")}/`,
    title: scientificName,
    names: [
      [shortName, "own"],
      [scientificName, "scientific"],
      ...vernacularNames.map(({ name, language }): SearchName => [name, "vernacular", language]),
      ...synonyms.map((name): SearchName => [name, "synonym"]),
    ],
  }),
);
const INDEX = indexNames(ENTRIES);
const found = (query: string) => search(INDEX, query, 8).map(({ entry }) => entry.path.slice(8, -1));

/** What people type, and what they mean: slips, half-typed words, other orders, old names, names of other languages. */
const MEANT: readonly (readonly [string, string])[] = [
  ["pascuorum", "pascuorum"],
  ["bombus pascorum", "pascuorum"],
  ["comon carder", "pascuorum"],
  ["common cardr", "pascuorum"],
  ["carder common", "pascuorum"],
  ["agrorum", "pascuorum"],
  ["bufftailed", "terrestris"],
  ["buf tailed", "terrestris"],
  ["terestris", "terrestris"],
  ["bombus terr", "terrestris"],
  ["bourdon terrestre", "terrestris"],
  ["bourdon terestre", "terrestris"],
  ["bourdon des jardin", "hortorum"],
  ["hortorium", "hortorum"],
  ["gardn", "hortorum"],
  ["soroensis", "soroeensis"],
  ["broken belt", "soroeensis"],
  ["brokenbelted", "soroeensis"],
  ["lapidaris", "lapidarius"],
  ["lapidarus", "lapidarius"],
  ["red taild bumble", "lapidarius"],
  ["derhamellus", "ruderarius"],
  ["red shanked", "ruderarius"],
  ["redshankd", "ruderarius"],
  ["hypnorm", "hypnorum"],
  ["tree bumblebee", "hypnorum"],
  ["bumblebee tree", "hypnorum"],
  ["vestals", "vestalis"],
  ["vestal cuckoo", "vestalis"],
  ["psithyrus vestalis", "vestalis"],
  ["bilbery", "monticola"],
  ["lapponicus", "monticola"],
  ["great yelow", "distinguendus"],
  ["distingendus", "distinguendus"],
  ["shril", "sylvarum"],
  ["sylvarm", "sylvarum"],
  ["moss cardre", "muscorum"],
  ["brown banded", "humilis"],
  ["gypsey", "bohemicus"],
  ["cacynen yr ardd", "hortorum"],
  ["cryptarum", "lucorum-agg"],
  ["jonelus", "jonellus"],
  ["early bumbelbee", "pratorum"],
  ["pratorum bombus", "pratorum"],
];

describe("search", () => {
  it("puts what is meant first for nearly all of what people type, and among the first three for all", () => {
    const wrong = MEANT.filter(([query, meant]) => found(query)[0] !== meant).map(
      ([query]) => `${query}: ${found(query).slice(0, 3).join(", ")}`,
    );
    expect(wrong.length, wrong.join("\n")).toBeLessThanOrEqual(2);
    const missed = MEANT.filter(([query, meant]) => !found(query).slice(0, 3).includes(meant)).map(([query]) => query);
    expect(missed).toEqual([]);
  });

  it("says by which name it was found", () => {
    expect(search(INDEX, "agrorum", 8)[0]?.name).toEqual(["Bombus agrorum", "synonym"]);
    expect(search(INDEX, "bourdon terrestre", 8)[0]?.name).toEqual(["bourdon terrestre", "vernacular", "fr"]);
  });

  it("finds every name by itself, and by any beginning of it from four letters on, with nothing before it that fits worse", () => {
    const names = ENTRIES.flatMap((entry) => entry.names.map(([text]) => ({ entry, text }))).filter(
      ({ text }) => folded(text).length >= 4,
    );
    fc.assert(
      fc.property(fc.constantFrom(...names), fc.nat(), ({ entry, text }, cut) => {
        const length = 4 + (cut % (text.length - 3));
        const answers = search(INDEX, text.slice(0, length), 100);
        const own = answers.find((answer) => answer.entry === entry);
        expect(own?.edits).toBe(0);
        expect(answers.map(({ edits }) => edits)).toEqual(answers.map(({ edits }) => edits).toSorted());
      }),
    );
  });

  it("finds nothing for nothing and for what is like no name", () => {
    for (const query of ["", "  ", "-", "zzzz", "xq"]) expect(found(query), query).toEqual([]);
  });
});

describe("clearAnswer", () => {
  it("is what is named in full, or alone without an error", () => {
    const clear = (query: string) => clearAnswer(search(INDEX, query, 30))?.entry.path;
    expect(clear("Bombus pascuorum")).toBe("species/pascuorum/");
    expect(clear("garden")).toBe("species/hortorum/");
    expect(clear("pascuorm")).toBe("species/pascuorum/");
    expect(clear("bombus")).toBeUndefined();
    expect(clear("carder")).toBeUndefined();
  });
});

describe("folded", () => {
  it("leaves case, accents, ligatures and signs out", () => {
    expect(["Œuf", "Straße", "Cacynen  Wen", "l’Été", "Buff/white-tailed", "É"].map(folded)).toEqual([
      "oeuf",
      "strasse",
      "cacynen wen",
      "lete",
      "buff white tailed",
      "e",
    ]);
  });
});
