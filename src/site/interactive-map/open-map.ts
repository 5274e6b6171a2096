import { addProtocol, Map as MapLibre, setWorkerUrl } from "maplibre-gl";
import workerUrl from "maplibre-gl/dist/maplibre-gl-worker.mjs?worker&url";
import { Protocol } from "pmtiles";
import type { MapSettings } from "../../publishing/map-folder.ts";
import {
  fetchSettings,
  fetchSquares,
  fetchTaxon,
  type RecordedSquare,
  type SquareBook,
  type TaxonOnMap,
} from "./map-data.ts";
import { hatchImage, mapStyle, readColours, TETRAD_ZOOM } from "./map-style.ts";
import { paintStates } from "./paint-states.ts";
import type { View } from "./square-paint.ts";
import { squareWords, uncoveredWords, viewWords } from "./square-words.ts";

/** Where the map's files are, what it opens with, and what to do when it is closed. */
export interface MapRequest {
  /** Address of the folder `map/`, with its closing slash. */
  readonly folder: string;
  readonly slug: string;
  readonly close: () => void;
}

interface OpenMap {
  readonly map: MapLibre;
  readonly panel: HTMLElement;
  readonly request: MapRequest;
  readonly settings: MapSettings;
  readonly hectads: SquareBook;
  tetrads: Promise<SquareBook> | undefined;
  taxon: TaxonOnMap;
  view: View;
  here: { size: "hectad" | "tetrad"; id: number } | undefined;
}

let prepared = false;

/**
 * Opens the map in its panel: tiles, species, controls.
 *
 * @param panel the copy of the template, already on the page
 * @param request folder, species, what closing does
 * @throws {Error} where WebGL is missing or a file cannot be fetched; the caller shows the reason
 */
export async function openMap(panel: HTMLElement, request: MapRequest): Promise<void> {
  if (!prepared) {
    setWorkerUrl(workerUrl);
    addProtocol("pmtiles", new Protocol().tile);
    prepared = true;
  }
  const [hectadsComing, taxonComing] = [
    fetchSquares(request.folder, "hectads"),
    fetchTaxon(request.folder, request.slug),
  ];
  const settings = await fetchSettings(request.folder);
  const [map, hectads, taxon] = await Promise.all([
    drawGround(element(panel, "[data-canvas]"), request, settings),
    hectadsComing,
    taxonComing,
  ]);
  const open: OpenMap = {
    map,
    panel,
    request,
    settings,
    hectads,
    tetrads: undefined,
    taxon,
    view: viewOf("both", settings),
    here: undefined,
  };
  repaint(open);
  joinControls(open);
  followTheme(open);
  map.on("click", ({ point }) => void tell(open, [point.x, point.y]));
  map.on("moveend", () => describeView(open));
  await map.once("idle");
  panel.dataset["drawn"] = "true";
  describeView(open);
}

async function drawGround(container: HTMLElement, { folder }: MapRequest, settings: MapSettings): Promise<MapLibre> {
  const colours = readColours(document.documentElement);
  const map = new MapLibre({
    container,
    style: mapStyle(new URL(`${folder}squares.pmtiles`, location.href).href, colours, settings.land),
    bounds: [...settings.bounds],
    fitBoundsOptions: { padding: 12 },
    minZoom: 2,
    maxZoom: 13,
    attributionControl: false,
    dragRotate: false,
    pitchWithRotate: false,
    touchPitch: false,
    rollEnabled: false,
    renderWorldCopies: false,
    fadeDuration: 0,
  });
  map.touchZoomRotate.disableRotation();
  map.keyboard.disableRotation();
  map.addImage("hatch", hatchImage(colours.hatch), { pixelRatio: 2 });
  const canvas = map.getCanvas();
  canvas.setAttribute("aria-label", "Map of squares");
  canvas.setAttribute("aria-describedby", "zoom-help");
  await new Promise<void>((resolve, reject) => {
    map.once("load", () => resolve());
    map.on("error", ({ error }) => reject(error));
  });
  return map;
}

function viewOf(value: string, { compared }: MapSettings): View {
  if (!compared) return { kind: "any" };
  if (value === "both") return { kind: "compared", earlier: compared[0], later: compared[1] };
  return { kind: "single", period: Number(value), isEarlier: Number(value) === compared[0] };
}

function repaint({ map, taxon, view, here }: OpenMap): void {
  paintStates(map, taxon, view);
  if (here) markHere(map, here, true);
}

function markHere(map: MapLibre, { size, id }: { size: "hectad" | "tetrad"; id: number }, here: boolean): void {
  const layers = size === "hectad" ? ["hectad_cell"] : ["tetrad_spine", "tetrad_page"];
  for (const sourceLayer of layers) map.setFeatureState({ source: "squares", sourceLayer, id }, { here });
}

function joinControls(open: OpenMap): void {
  const { map, panel, settings, request } = open;
  const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
  const duration = still ? 0 : 250;
  const step = (x: number, y: number) =>
    map.panBy([x * map.getContainer().clientWidth * 0.3, y * map.getContainer().clientHeight * 0.3], { duration });
  const acts: Record<string, () => void> = {
    in: () => map.zoomTo(map.getZoom() + 1, { duration }),
    out: () => map.zoomTo(map.getZoom() - 1, { duration }),
    north: () => step(0, -1),
    south: () => step(0, 1),
    west: () => step(-1, 0),
    east: () => step(1, 0),
    whole: () => map.fitBounds([...settings.bounds], { padding: 12, duration }),
  };
  for (const button of panel.querySelectorAll<HTMLButtonElement>("[data-do]"))
    button.addEventListener("click", () => acts[button.dataset["do"] ?? ""]?.());
  for (const radio of panel.querySelectorAll<HTMLInputElement>('input[type="radio"]')) {
    radio.addEventListener("change", () => {
      open.view = viewOf(radio.value, settings);
      repaint(open);
      describeView(open);
    });
  }
  const species = element<HTMLSelectElement>(panel, "[data-taxon]");
  species.replaceChildren(
    ...settings.taxa.map(({ slug, name }) => new Option(name, slug, slug === request.slug, slug === request.slug)),
  );
  species.addEventListener("change", () => void showTaxon(open, species.value));
  map.getCanvas().addEventListener("keydown", (event) => {
    if (event.key !== "Enter") return;
    event.preventDefault();
    const { clientWidth, clientHeight } = map.getContainer();
    void tell(open, [clientWidth / 2, clientHeight / 2]);
  });
  element<HTMLFormElement>(panel, "[data-find]").addEventListener("submit", (event) => {
    event.preventDefault();
    void find(open, element<HTMLInputElement>(panel, "[data-code]").value, duration);
  });
  element<HTMLDetailsElement>(panel, "[data-list]").addEventListener("toggle", () => void listSquares(open));
  element<HTMLButtonElement>(panel, "[data-close]").addEventListener("click", () => {
    map.remove();
    request.close();
  });
}

async function showTaxon(open: OpenMap, slug: string): Promise<void> {
  try {
    open.taxon = await fetchTaxon(open.request.folder, slug);
  } catch {
    say(open, "That species could not be fetched. The map still shows the one before.");
    return;
  }
  repaint(open);
  describeView(open);
  if (open.here) await showSquare(open, open.here.size, open.here.id);
}

/** Colours follow the page when the reader's theme changes. */
function followTheme(open: OpenMap): void {
  const { map, settings, request } = open;
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => {
    const colours = readColours(document.documentElement);
    map.updateImage("hatch", hatchImage(colours.hatch));
    const style = mapStyle(new URL(`${request.folder}squares.pmtiles`, location.href).href, colours, settings.land);
    for (const layer of style.layers) {
      for (const [name, value] of Object.entries(layer.paint ?? {}))
        map.setPaintProperty(layer.id, name as never, value as never);
    }
  });
}

const isFine = (map: MapLibre) => map.getZoom() >= TETRAD_ZOOM;

async function tell(open: OpenMap, point: [number, number]): Promise<void> {
  const { map } = open;
  const fine = isFine(map);
  const reach = fine ? 3 : 0;
  const box: [[number, number], [number, number]] = [
    [point[0] - reach, point[1] - reach],
    [point[0] + reach, point[1] + reach],
  ];
  const recorded = fine
    ? map
        .queryRenderedFeatures(box, { layers: ["tetrad_spine_solid", "tetrad_page_solid"] })
        .find(({ id }) => open.taxon.tetrads.has(Number(id)))
    : undefined;
  const hectad = map.queryRenderedFeatures(point, { layers: ["hectad_cells"] })[0];
  if (recorded) return showSquare(open, "tetrad", Number(recorded.id));
  if (hectad) return showSquare(open, "hectad", Number(hectad.id));
  say(open, "No square of the atlas there.");
}

async function showSquare(open: OpenMap, size: "hectad" | "tetrad", id: number): Promise<void> {
  const { map, taxon, settings } = open;
  if (open.here) markHere(map, open.here, false);
  open.here = { size, id };
  markHere(map, open.here, true);
  const book = size === "hectad" ? open.hectads : await tetradBook(open);
  const code = book.codes[id - book.first] ?? "This square";
  const square = (size === "hectad" ? taxon.hectads : taxon.tetrads).get(id);
  const words =
    square || size === "tetrad"
      ? squareWords(code, square, taxon, size === "hectad" ? 10_000 : 2_000, settings)
      : uncoveredWords(code, taxon.uncovered.get(id), taxon, settings, settings.compared);
  say(open, words);
}

function tetradBook(open: OpenMap): Promise<SquareBook> {
  open.tetrads ??= fetchSquares(open.request.folder, "tetrads");
  return open.tetrads;
}

async function find(open: OpenMap, text: string, duration: number): Promise<void> {
  const code = text.replace(/\s+/g, "").toUpperCase();
  const inHectads = open.hectads.ids.get(code);
  const book = inHectads === undefined ? await tetradBook(open) : open.hectads;
  const id = inHectads ?? book.ids.get(code);
  const middle = id === undefined ? undefined : book.middle(id);
  if (id === undefined || !middle) {
    say(
      open,
      `${text.trim() || "That"} is no square of this atlas. Write a 10 km square such as ${open.hectads.codes[0] ?? ""}, or a 2 km square.`,
    );
    return;
  }
  const size = book === open.hectads ? "hectad" : "tetrad";
  const arrived = open.map.once("moveend");
  open.map.easeTo({ center: middle, zoom: size === "hectad" ? 7 : 10, duration });
  await arrived;
  await showSquare(open, size, id);
}

function recordedInView(open: OpenMap): { size: "hectads" | "tetrads"; ids: number[] } {
  const size = isFine(open.map) ? "tetrads" : "hectads";
  const part = size === "tetrads" ? "tetrad" : "hectad";
  const seen = open.map
    .queryRenderedFeatures({ layers: [`${part}_spine_solid`, `${part}_page_solid`] })
    .map(({ id }) => Number(id));
  const shown = (square: RecordedSquare | undefined) =>
    square !== undefined && (open.view.kind !== "single" || (square.records[open.view.period] ?? 0) > 0);
  return { size, ids: [...new Set(seen)].filter((id) => shown(open.taxon[size].get(id))).toSorted((a, b) => a - b) };
}

function describeView(open: OpenMap): void {
  const { size, ids } = recordedInView(open);
  element(open.panel, "[data-view]").textContent = viewWords(
    open.taxon,
    open.view,
    ids.length,
    size === "tetrads" ? "2 km" : "10 km",
    open.settings,
  );
  void listSquares(open);
}

const LONGEST_LIST = 60;

async function listSquares(open: OpenMap): Promise<void> {
  const details = element<HTMLDetailsElement>(open.panel, "[data-list]");
  if (!details.open) return;
  const { size, ids } = recordedInView(open);
  const book = size === "hectads" ? open.hectads : await tetradBook(open);
  const items = ids.slice(0, LONGEST_LIST).map((id) => {
    const item = document.createElement("li");
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = book.codes[id - book.first] ?? String(id);
    button.addEventListener("click", () => void showSquare(open, size === "hectads" ? "hectad" : "tetrad", id));
    item.append(button);
    return item;
  });
  if (ids.length > LONGEST_LIST) {
    const rest = document.createElement("li");
    rest.textContent = `and ${ids.length - LONGEST_LIST} more: zoom in`;
    items.push(rest);
  }
  element(details, "ul").replaceChildren(...items);
}

/** Tells of a square or of a failure; the line above it tells of the view. */
function say({ panel }: Pick<OpenMap, "panel">, words: string): void {
  element(panel, "[data-square]").textContent = words;
}

function element<T extends HTMLElement = HTMLElement>(within: Element, selector: string): T {
  const found = within.querySelector<T>(selector);
  if (!found) throw new Error(`the page lacks ${selector}`);
  return found;
}
