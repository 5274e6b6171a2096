import type { ChecklistRow } from "../scheme/content-tables.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { uniqueSlugs } from "./slug.ts";

/** What a taxon is called on pages and in tables. */
export interface TaxonNames {
  taxon: ChecklistRow;
  slug: string;
  vernacularName: string;
  shortName: string;
}

/** Names and addresses of all taxa, by taxonID, in the checklist's order. */
export function namesOfTaxa({ taxa, settings }: Scheme): Map<string, TaxonNames> {
  const slugs = uniqueSlugs(taxa.map(({ scientificName }) => scientificName));
  const language = settings.language.split("-")[0] ?? "";
  return new Map(
    taxa.map((taxon, index) => {
      const vernacularName =
        taxon.vernacularNames.find((name) => name.language.split("-")[0] === language)?.name ?? taxon.scientificName;
      return [
        taxon.taxonID,
        {
          taxon,
          slug: slugs[index] ?? "",
          vernacularName,
          shortName: taxon.shortName || shorten(vernacularName, settings.group.one),
        },
      ];
    }),
  );
}

function shorten(name: string, groupWord: string): string {
  const without = name.replace(new RegExp(`\\s+${groupWord.replaceAll(/[^\p{L}\p{N} ]/gu, "")}$`, "iu"), "");
  return without === "" ? name : without;
}
