import type { AtlasFile, TaxonFile } from "../../publishing/contracts.ts";
import { listed, small } from "../components/text/words.ts";
import { say } from "../words/say.ts";
import type { AtlasMap } from "./atlas-map.ts";
import type { TaxonSquares } from "./taxon-squares.ts";

export { coverRule, type KeyGroup, type KeyLine, keyGroups } from "./map-key.ts";

type Named = Pick<AtlasFile, "invented" | "territories">;

/**
 * The question a species map answers.
 *
 * @param name as `inSentence` gives it
 * @example mapTitle("the red-tailed bumblebee", taxon) // "Where the red-tailed bumblebee was recorded, 1990–2005 and 2006–2024, by 10 km square"
 */
export function mapTitle(name: string, { periods, resolution }: TaxonSquares): string {
  const years = listed([periods.earlier?.label, periods.later?.label].filter((label) => label !== undefined));
  const side = resolution === 10_000 ? "10 km" : "2 km";
  return years === "" ? say("maps.title", { name, side }) : say("maps.title-years", { name, side, years });
}

/**
 * The counts of a species map in words: by class, then the classes that matter by territory.
 *
 * @param squares sorted squares
 * @param atlas names of territories; whether the records are invented
 * @returns plain sentences
 * @example mapDescription(squares, atlas) // "658 squares found in both periods, 189 newly found, … Invented records."
 */
export function mapDescription(squares: TaxonSquares, atlas: Named): string {
  const { counts, compared, resolution } = squares;
  const sentences = compared ? comparedCounts(squares, atlas) : recordedCounts(squares, atlas);
  if (counts.other > 0) sentences.push(say("maps.other-years", { squares: counts.other }));
  if (resolution === 10_000)
    sentences.push(say(compared ? "maps.covered-neither" : "maps.not-covered", { squares: counts.coveredNeither }));
  if (atlas.invented) sentences.push(say("maps.invented"));
  return sentences.join(" ");
}

function comparedCounts(squares: TaxonSquares, atlas: Named): string[] {
  const { both, new: found, gone, since, before } = squares.counts;
  return [
    say("maps.found-both", { both, new: found, gone, apart: since + before }),
    ...byTerritory(squares, atlas, "new", "maps.by-territory-new"),
    ...byTerritory(squares, atlas, "gone", "maps.by-territory-gone"),
    ...byTerritory(squares, atlas, "both", "maps.by-territory-both"),
  ];
}

function recordedCounts(squares: TaxonSquares, atlas: Named): string[] {
  return [
    say("maps.recorded-in", { squares: squares.counts.both }),
    ...byTerritory(squares, atlas, "both", "maps.by-territory-recorded"),
  ];
}

function byTerritory(
  { byTerritory: counts }: TaxonSquares,
  { territories }: Named,
  kind: "new" | "gone" | "both",
  key: `maps.by-territory-${"new" | "gone" | "both" | "recorded"}`,
): string[] {
  if (territories.length < 2) return [];
  const parts = territories
    .map(({ id, name }) => ({ name, squares: counts.get(id)?.[kind] ?? 0 }))
    .filter(({ squares }) => squares > 0)
    .map((part) => say("maps.territory-squares", part));
  return parts.length === 0 ? [] : [say(key, { list: parts.join(", ") })];
}

/**
 * The caption under a full map: squares, ticks, projection, insets. The base map's credit stands beside it.
 *
 * @param map layout
 * @param atlas grids and territories by name
 * @param resolution side of the squares in metres
 * @returns plain sentences
 */
export function mapCaption(
  map: AtlasMap,
  atlas: Pick<AtlasFile, "territories" | "map" | "invented">,
  resolution: 10_000 | 2_000,
): string {
  const own = atlas.territories.find(({ grid }) =>
    map.placements.some((placement) => placement.grid === grid && placement.crs === map.frame.crs),
  );
  const values = {
    kilometres: resolution / 1000,
    grids: listed([...new Set(atlas.territories.map(({ grid_name }) => grid_name))]),
    step: map.furniture.tickStep >= 1000 ? `${map.furniture.tickStep / 1000} km` : `${map.furniture.tickStep} m`,
  };
  const moved = atlas.territories
    .filter(({ id }) => map.insets.some(({ territory }) => territory === id))
    .map(({ name }) => name);
  return [
    own === undefined
      ? say("maps.caption-projection", { ...values, crs: map.frame.crs })
      : say("maps.caption", { ...values, grid: own.grid_name }),
    moved.length === 0 ? "" : say("maps.inset", { names: listed(moved) }),
    atlas.invented ? say("maps.invented") : "",
  ]
    .filter(Boolean)
    .join(" ");
}

/** The name a map's title uses: "the red-tailed bumblebee"; names of aggregates and groups keep their capital. */
export function inSentence({
  vernacular_name,
  scientific_name,
  is_aggregate,
}: Pick<TaxonFile, "vernacular_name" | "scientific_name" | "is_aggregate">): string {
  const kind = vernacular_name === scientific_name ? "scientific" : is_aggregate ? "aggregate" : "species";
  return say("maps.in-sentence", { kind, name: vernacular_name, small: small(vernacular_name) });
}
