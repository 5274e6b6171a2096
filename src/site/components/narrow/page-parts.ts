/** What the page of the helper is made of, in the build. */
import { address, sharedAddress } from "../../address.ts";
import { atlasMap } from "../../maps/atlas-drawing.ts";
import type { AtlasMap } from "../../maps/atlas-map.ts";
import { CELL } from "../../maps/book-cell.ts";
import { atlas, squares } from "../../published.ts";
import type { IdentifyTaxon } from "../identify/identify-taxa.ts";
import { miniBody } from "../tell-apart/body-html.ts";
import { small } from "../text/words.ts";
import { bodyId } from "./body-id.ts";
import type { MapGrid } from "./map-grids.ts";
import type { PageData } from "./page-data.ts";

const HECTAD = 10_000;

/**
 * Where each grid of the map lies: from units of 10 km, east and north, to units of the map.
 *
 * @example mapGrids(atlasMap())[0]?.grid // "british"
 */
export function mapGrids({ placements }: Pick<AtlasMap, "placements">): MapGrid[] {
  return placements.map(({ grid, west, north, matrix: [a, b, c, d, e, f] }) => {
    const [left, top] = [(CELL * west) / HECTAD, (CELL * north) / HECTAD];
    return {
      grid,
      matrix: [CELL * a, CELL * b, -CELL * c, -CELL * d, e - a * left + c * top, f - b * left + d * top],
    };
  });
}

/** A square with many records, to show as an example. @example exampleSquare() // "NZ27" */
export function exampleSquare(): string {
  const all = squares().squares;
  return all.reduce(
    (most, square) => (square.records > most.records ? square : most),
    all[0] ?? { square: "", records: 0 },
  ).square;
}

/** What the page's script needs to know, in the language of the page. */
export function pageDataOf(example: string): PageData {
  const { effort_season, castes, group } = atlas();
  return {
    visits: effort_season,
    castes: castes.map(({ id, label }) => ({ id, label: small(label) })),
    group: group.many,
    mapGrids: mapGrids(atlasMap()),
    example,
    addresses: {
      identify: address("identify.json"),
      places: sharedAddress("identify/places/"),
      species: address("species/"),
      tellApart: address("tell-apart/"),
      outside: address("tell-apart/outside/"),
    },
  };
}

/** Small bodies of a taxon for the script to copy: one for each caste and form that has one, by its id. */
export function bodiesOf(taxon: IdentifyTaxon): { id: string; html: string }[] {
  const forms = new Set(["", ...taxon.characters.map(({ form }) => form)]);
  return (taxon.castes.length === 0 ? [""] : taxon.castes)
    .flatMap((caste) => [...forms].map((form) => ({ caste, form })))
    .map(({ caste, form }) => ({ id: bodyId(taxon.slug, caste, form), html: miniBody(taxon, caste, form) }))
    .filter(({ html }) => html !== "");
}
