import type { MediaRow } from "../../scheme/content-tables.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import type { Media, MediaFile, MediaSource } from "../contracts.ts";
import { licenceOf } from "../licences.ts";
import { outsideNames } from "../outside-taxa.ts";
import { slugOf } from "../slug.ts";
import type { TaxonNames } from "../taxon-names.ts";

/** A picture of the scheme that is made ready: its row, its id, and its files below `media/`. */
export interface ReadyMedia {
  row: MediaRow;
  id: string;
  sources: MediaSource[];
}

/**
 * Ids of pictures from their files' names, each once.
 *
 * @example mediaIds(["Hind leg.svg", "hind-leg.jpg"]) // ["hind-leg", "hind-leg-2"]
 */
export function mediaIds(files: readonly string[]): string[] {
  const used = new Map<string, number>();
  return files.map((file) => {
    const id = slugOf(file.replace(/\.[^.]*$/, "")) || "picture";
    const times = (used.get(id) ?? 0) + 1;
    used.set(id, times);
    return times === 1 ? id : `${id}-${times}`;
  });
}

/** A picture as its contract has it. */
export function mediaOf({ row, id, sources }: ReadyMedia): Media {
  const largest = sources.reduce((one, other) => (other.width > one.width ? other : one));
  const { castes, form, parts, credit, alt, caption, date } = row;
  return {
    id,
    kind: row.kind as Media["kind"],
    castes,
    form,
    parts,
    credit,
    licence: licenceOf(row.licence),
    alt,
    caption,
    date,
    width: largest.width,
    height: largest.height,
    sources,
  };
}

/** Every picture with the taxon it is of, in the order of the scheme's table. */
export function mediaFile(
  media: readonly ReadyMedia[],
  scheme: Pick<Scheme, "outside" | "settings">,
  names: ReadonlyMap<string, TaxonNames>,
): MediaFile {
  const outsiders = outsideNames(scheme, names);
  return {
    media: media.flatMap((one) => {
      const taxon = names.get(one.row.taxonID) ?? outsiders.get(one.row.taxonID);
      return taxon === undefined ? [] : [{ ...mediaOf(one), of: taxon.slug, name: taxon.vernacularName }];
    }),
  };
}
