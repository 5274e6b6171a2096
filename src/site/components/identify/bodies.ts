import type { TaxonFile } from "../../../publishing/contracts.ts";
import { atlas, publishedFolder, taxon } from "../../published.ts";

/** What a small body is drawn from. */
export type DrawnTaxon = Pick<TaxonFile, "castes" | "characters">;

let kept: { folder: string; bodies: Map<string, DrawnTaxon> } | undefined;

/**
 * Castes and characters of every taxon, by slug. Read once a build, and without the squares, which are large.
 *
 * @example bodies().get("red-tailed")?.castes // ["queen", "worker", "male"]
 */
export function bodies(): ReadonlyMap<string, DrawnTaxon> {
  const folder = publishedFolder();
  if (kept?.folder !== folder) {
    const read = atlas().taxa.map(({ slug }): [string, DrawnTaxon] => {
      const { castes, characters } = taxon(slug);
      return [slug, { castes, characters }];
    });
    kept = { folder, bodies: new Map(read) };
  }
  return kept.bodies;
}
