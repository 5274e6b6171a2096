import type { FeatureCollection } from "geojson";
import { basemap } from "../../published.ts";
import type { AtlasMap } from "../atlas-map.ts";
import { largerThan } from "../coast.ts";
import { mapDefs, SHARED } from "../map-shapes.ts";
import { HALVES, outlinesPath, simplify } from "../outline.ts";
import { hatchSvg, squaresSvg } from "../species-map.ts";
import { sortSquares, type TaxonSquares } from "../taxon-squares.ts";
import { atTime, type Shown, type Time } from "./times.ts";

/** Steps a unit of the coast of an enlarged map. */
const STEPS = 16;
/** Smallest triangle kept and smallest island drawn of it, in square units. */
const [FINE, SMALLEST] = [0.12, 0.02];

const made = new WeakMap<AtlasMap, string>();

/**
 * What the enlarged views share: a finer coast and lakes than the small maps have, and the hatch.
 *
 * @param map layout of the atlas's maps
 * @returns content of a `<defs>`; the ids are those of the small maps, of which such a page has none
 */
export function largeDefs(map: AtlasMap): string {
  const known = made.get(map);
  if (known !== undefined) return known;
  const land = pathOf(map, collection("land-detail") ?? collection("land"));
  const lakes = pathOf(map, collection("lakes"));
  const coast =
    land === ""
      ? ""
      : `<path id="${SHARED.land}" transform="scale(${1 / STEPS})" vector-effect="non-scaling-stroke" d="${land}"/><clipPath id="${SHARED.clip}"><use href="#${SHARED.land}"/></clipPath>`;
  const water = `<g id="large-water">${lakes === "" ? "" : `<path class="map-lake" transform="scale(${1 / STEPS})" vector-effect="non-scaling-stroke" d="${lakes}"/>`}${map.borders === "" ? "" : `<path class="map-border" transform="scale(${1 / HALVES})" vector-effect="non-scaling-stroke" d="${map.borders}"/>`}</g>`;
  const defs = mapDefs({ ...map, land: "" }) + coast + water;
  made.set(map, defs);
  return defs;
}

function pathOf(map: AtlasMap, file: FeatureCollection | undefined): string {
  return outlinesPath(
    largerThan(SMALLEST, map.outlines(file)).map((outline) => simplify(outline, FINE)),
    STEPS,
  );
}

function collection(name: string): FeatureCollection | undefined {
  const text = basemap(name);
  return text === undefined ? undefined : (JSON.parse(text) as FeatureCollection);
}

/** The drawings of one time, each a group with an id, to be used by several views. */
export interface TimeLayers {
  readonly hectads: TaxonSquares;
  /** Undefined where the taxon has no square of 2 km, or they may not be judged for the comparison. */
  readonly tetrads: TaxonSquares | undefined;
  readonly svg: string;
}

/**
 * The layers of one time: hatch, squares of 10 km, squares of 2 km.
 *
 * @param map layout of the atlas's maps
 * @param shown atlas and taxon
 * @param time what is shown of time
 * @param n number of the time, part of the ids `hatch-n`, `hectads-n`, `tetrads-n`
 */
export function timeLayers(map: AtlasMap, { atlas, taxon }: Shown, time: Time, n: number): TimeLayers {
  const own = atTime(atlas, taxon, time, () => true);
  const hectads = sortSquares(map, own.atlas, own.taxon, 10_000);
  const finer = sortSquares(map, own.atlas, own.taxon, 2_000);
  const tetrads = own.taxon.squares["2000"].length > 0 && finer.compared === hectads.compared ? finer : undefined;
  const id = `large-${n}`;
  return {
    hectads,
    tetrads,
    svg:
      `<g id="hectads-${n}">${squaresSvg(map, hectads, id)}</g><g id="hatch-${n}">${hatchSvg(map, hectads, id)}</g>` +
      (tetrads === undefined ? "" : `<g id="tetrads-${n}">${squaresSvg(map, tetrads, `${id}-2`)}</g>`),
  };
}
