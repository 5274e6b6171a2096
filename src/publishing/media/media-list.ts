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
 * Ids of pictures from their files' names: one file has one id, however many taxa show it, and no other file has it.
 *
 * @example mediaIds(["Hind leg.svg", "hind-leg.jpg", "Hind leg.svg"]) // ["hind-leg", "hind-leg-2", "hind-leg"]
 */
export function mediaIds(files: readonly string[]): string[] {
  const ids = new Map<string, string>();
  const times = new Map<string, number>();
  for (const file of files) {
    if (ids.has(file)) continue;
    const id = slugOf(file.replace(/\.[^.]*$/, "")) || "picture";
    const before = times.get(id) ?? 0;
    times.set(id, before + 1);
    ids.set(file, before === 0 ? id : `${id}-${before + 1}`);
  }
  return files.map((file) => ids.get(file) ?? "");
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
