import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { GridId } from "../../src/grids/grid.ts";
import { isRefusal } from "../../src/grids/grid.ts";
import { gridNamed } from "../../src/grids/index.ts";
import { AtlasFile, NeighbourhoodBlock, NeighbourhoodIndex, TaxonFile } from "../../src/publishing/contracts.ts";
import { aroundSquare, frequenciesOf } from "../../src/site/components/narrow/around-square.ts";
import type { Frequencies } from "../../src/site/components/narrow/encounter-rates.ts";
import type { NarrowTaxon } from "../../src/site/components/narrow/narrow-taxa.ts";

/** The published tables the helper reads, as its page would. */
export interface Tables {
  readonly taxa: readonly NarrowTaxon[];
  readonly visits: readonly number[];
  readonly castes: readonly string[];
  readonly slugOf: ReadonlyMap<string, string>;
  readonly outside: readonly { id: string; castes: readonly string[] }[];
  /** Frequencies round a square; over the atlas without one, or for one the atlas does not have. */
  frequencies(place: { grid: string; hectad: string } | undefined): Frequencies;
}

/**
 * Reads the tables of a published folder.
 *
 * @param folder from `publishDemonstration`
 */
export function readTables(folder: string): Tables {
  const json = (name: string): unknown => JSON.parse(readFileSync(join(folder, name), "utf8"));
  const atlas = AtlasFile.parse(json("atlas.json"));
  const index = NeighbourhoodIndex.parse(json("identify/places/index.json"));
  const blocks = new Map<string, NeighbourhoodBlock>();
  const taxa = atlas.taxa.map(({ slug }) => TaxonFile.parse(json(`taxa/${slug}.json`)));
  return {
    taxa: [
      ...taxa.map(
        (taxon): NarrowTaxon => ({
          ...taxon,
          name: taxon.vernacular_name,
          short: taxon.short_name,
          scientific: taxon.scientific_name,
          outside: false,
          aggregate: taxon.is_aggregate,
          evidence: taxon.evidence_needed,
          characters: [...taxon.characters, ...atlas.group_characters],
          seasons: taxon.season_by_caste,
        }),
      ),
      ...atlas.outside.map(
        (taxon): NarrowTaxon => ({
          ...taxon,
          name: taxon.vernacular_name,
          short: taxon.short_name,
          scientific: taxon.scientific_name,
          outside: true,
          aggregate: false,
          members: [],
          evidence: "",
          season: [],
          seasons: [],
        }),
      ),
    ],
    visits: atlas.effort_season,
    castes: atlas.castes.map(({ id }) => id),
    slugOf: new Map([...atlas.taxa, ...atlas.outside].map(({ taxon_id, slug }) => [taxon_id, slug])),
    outside: atlas.outside.map(({ taxon_id, castes }) => ({ id: taxon_id, castes })),
    frequencies: (place) => {
      const square = place && gridNamed(place.grid as GridId).parse(place.hectad);
      if (place === undefined || square === undefined || isRefusal(square)) return frequenciesOf(index);
      const name = `${place.grid}-${Math.floor(square.easting / 100_000)}-${Math.floor(square.northing / 100_000)}`;
      if (!index.blocks.includes(name)) return frequenciesOf(index);
      const block = blocks.get(name) ?? NeighbourhoodBlock.parse(json(`identify/places/${name}.json`));
      blocks.set(name, block);
      return aroundSquare(index, block, place.hectad)?.frequencies ?? frequenciesOf(index);
    },
  };
}
