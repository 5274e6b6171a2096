import type { GeoJSONSource, Map as MapLibre } from "maplibre-gl";
import type { MapSettings, MapVisits } from "../../publishing/map-folder.ts";
import { fetchSquares, type SquareBook, type TaxonOnMap } from "./map-data.ts";
import type { MapWords } from "./map-words.ts";
import { paintAllVisits, paintStates } from "./paint-states.ts";
import type { MapPlace } from "./permalink.ts";
import { outlineOf, type Place } from "./square-outline.ts";
import type { View } from "./square-paint.ts";

/** Where the map's files are, what it opens with, and what to do when it is closed. */
export interface MapRequest {
  /** Address of the folder `map/`, with its closing slash. */
  readonly folder: string;
  /** Address prefix of the pages of this language. */
  readonly base: string;
  /** What is shown first: the taxon at least. */
  readonly place: MapPlace & { readonly taxon: string };
  /** Whether the page is the map's own, and its address follows what is seen. */
  readonly ownPage: boolean;
  /** Puts the panel on the page. */
  readonly shown: (panel: HTMLElement) => void;
  readonly close: () => void;
}

/** One square the reader chose: which of the two sizes, and its id. */
export interface ChosenSquare {
  readonly size: "hectad" | "tetrad";
  readonly id: number;
}

/** A map that is open: what it is made of, and what the reader chose. */
export interface OpenMap {
  readonly map: MapLibre;
  readonly panel: HTMLElement;
  readonly request: MapRequest;
  readonly settings: MapSettings;
  readonly words: MapWords;
  readonly hectads: SquareBook;
  tetrads: Promise<SquareBook> | undefined;
  visits: MapVisits | undefined;
  slug: string;
  taxon: TaxonOnMap;
  view: View;
  /** The choice of the panel that the view stands for. */
  viewValue: string;
  here: ChosenSquare | undefined;
  hereCode: string | undefined;
}

/**
 * The view a choice of period stands for.
 *
 * @param value "both", "visits", or a period's place in the settings
 * @param settings the compared periods; without them squares stand for any date
 * @example viewOf("1", { ...settings, compared: [0, 1] }) // { kind: "single", period: 1, isEarlier: false }
 */
export function viewOf(value: string, { compared }: MapSettings): View {
  if (value === "visits") return { kind: "visits" };
  if (!compared) return { kind: "any" };
  if (!compared.includes(Number(value)) || value === "")
    return { kind: "compared", earlier: compared[0], later: compared[1] };
  return { kind: "single", period: Number(value), isEarlier: Number(value) === compared[0] };
}

/** Paints the taxon or the visits, and the outline of the chosen square anew. */
export function repaint({ map, taxon, view, here, visits, settings, hectads }: OpenMap): void {
  if (view.kind === "visits" && visits !== undefined)
    paintAllVisits(map, visits, settings.compared, hectads.first + hectads.codes.length);
  else paintStates(map, taxon, view);
  if (here) markHere(map, here, true);
}

/** The outline a map shows now: a map is idle again after each change, and must not be changed for nothing. */
const outlined = new WeakMap<MapLibre, string>();

/** Draws or removes the outline of a square; that of a 2 km square is drawn round its parts, where they are in view. */
export function markHere(map: MapLibre, { size, id }: ChosenSquare, here: boolean): void {
  if (size === "hectad") map.setFeatureState({ source: "squares", sourceLayer: "hectad_cell", id }, { here });
  const outline = size === "tetrad" && here ? outlineOf(cornersOf(map, id)) : [];
  const words = outline.join(" ");
  if (outlined.get(map) === words) return;
  outlined.set(map, words);
  void map.getSource<GeoJSONSource>("here")?.setData({
    type: "Feature",
    properties: {},
    geometry: { type: "LineString", coordinates: outline.map(([longitude, latitude]) => [longitude, latitude]) },
  });
}

/** Corners of the pieces of a 2 km square in the tiles in view. */
function cornersOf(map: MapLibre, id: number): Place[] {
  return ["tetrad_spine", "tetrad_page"]
    .flatMap((sourceLayer) => map.querySourceFeatures("squares", { sourceLayer, filter: ["==", ["id"], id] }))
    .flatMap(({ geometry }) =>
      geometry.type === "Polygon"
        ? geometry.coordinates.flat()
        : geometry.type === "MultiPolygon"
          ? geometry.coordinates.flat(2)
          : [],
    )
    .map(([longitude = 0, latitude = 0]) => [longitude, latitude] as const);
}

/** Codes and middles of the 2 km squares, fetched once, when first asked for; a failure is forgotten, to try again. */
export function tetradBook(open: OpenMap): Promise<SquareBook> {
  open.tetrads ??= fetchSquares(open.request.folder, "tetrads").catch((error: unknown) => {
    open.tetrads = undefined;
    throw error;
  });
  return open.tetrads;
}

/** Tells of a square or of a failure; the line above it tells of the view. */
export function say({ panel }: Pick<OpenMap, "panel">, words: string): void {
  element(panel, "[data-square]").textContent = words;
}

/** An element of the panel. @throws {Error} where the panel lacks it */
export function element<T extends HTMLElement = HTMLElement>(within: Element, selector: string): T {
  const found = within.querySelector<T>(selector);
  if (!found) throw new Error(`the page lacks ${selector}`);
  return found;
}
