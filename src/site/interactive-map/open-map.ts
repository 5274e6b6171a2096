import { addProtocol, Map as MapLibre, setWorkerUrl } from "maplibre-gl";
import workerUrl from "maplibre-gl/dist/maplibre-gl-worker.mjs?worker&url";
import { Protocol } from "pmtiles";
import type { MapSettings } from "../../publishing/map-folder.ts";
import styles from "./interactive-map.css?url";
import { joinControls, showView } from "./map-controls.ts";
import { fetchSettings, fetchSquares, fetchTaxon } from "./map-data.ts";
import { element, type MapRequest, type OpenMap, repaint, viewOf } from "./map-session.ts";
import { hatchImage, mapStyle, readColours } from "./map-style.ts";
import { fetchMapWords, type MapWords } from "./map-words.ts";
import { panelOf } from "./panel.ts";
import type { MapPlace } from "./permalink.ts";
import { describeView, find } from "./tell-squares.ts";

/** What the map says over itself where the wheel or a finger scrolls the page. */
const gestureWords = ({ say }: MapWords) => ({
  "CooperativeGesturesHandler.WindowsHelpText": say("zoom.windows"),
  "CooperativeGesturesHandler.MacHelpText": say("zoom.mac"),
  "CooperativeGesturesHandler.MobileHelpText": say("zoom.mobile"),
});

let prepared = false;

/**
 * Opens the map in a panel of its own: tiles, species, controls.
 *
 * @param request folder, species, how the panel is shown, what closing does
 * @throws {Error} where WebGL is missing or a file cannot be fetched; the caller shows the reason
 */
export async function openMap(request: MapRequest): Promise<void> {
  if (!prepared) {
    setWorkerUrl(workerUrl);
    addProtocol("pmtiles", new Protocol().tile);
    prepared = true;
  }
  const [settings, words] = await Promise.all([
    fetchSettings(request.folder),
    fetchMapWords(request.base),
    addStyles(styles),
  ]);
  const panel = panelOf(settings, words.say, document.querySelector(".map-credit"));
  const { place } = request;
  const slug = settings.taxa.some((taxon) => taxon.slug === place.taxon) ? place.taxon : (settings.taxa[0]?.slug ?? "");
  request.shown(panel);
  const mapComing = drawGround(element(panel, "[data-canvas]"), request, settings, words);
  const [map, hectads, taxon] = await Promise.all([
    mapComing,
    fetchSquares(request.folder, "hectads"),
    fetchTaxon(request.folder, slug, words.nameOf(slug)),
  ]).catch((error: unknown) => {
    void mapComing.then((drawn) => drawn.remove()).catch(() => undefined);
    throw error;
  });
  const open: OpenMap = {
    map,
    panel,
    request,
    settings,
    words,
    hectads,
    tetrads: undefined,
    visits: undefined,
    slug,
    taxon,
    view: viewOf("both", settings),
    viewValue: settings.compared === null ? "any" : "both",
    here: undefined,
    hereCode: undefined,
  };
  repaint(open);
  joinControls(open);
  await map.once("idle");
  await goTo(open, place);
  panel.dataset["drawn"] = "true";
  describeView(open);
}

/** What the address asked for: a view, a part of the map, a square. */
async function goTo(open: OpenMap, { view, zoom, longitude, latitude, square }: MapPlace): Promise<void> {
  const radio = [...open.panel.querySelectorAll<HTMLInputElement>('input[name="zoom-view"]')].find(
    ({ value }) => value === view,
  );
  if (square !== undefined) await find(open, square, 0);
  if (zoom !== undefined && longitude !== undefined && latitude !== undefined) {
    open.map.jumpTo({ center: [longitude, latitude], zoom });
    await open.map.once("idle");
  }
  if (radio === undefined || radio.value === open.viewValue) return;
  radio.checked = true;
  await showView(open, radio.value);
}

/** Styles of the panel, asked for with the map and not with the page. */
async function addStyles(href: string): Promise<void> {
  if (document.querySelector(`link[href="${href}"]`)) return;
  const link = Object.assign(document.createElement("link"), { rel: "stylesheet", href });
  const loaded = new Promise((resolve, reject) => {
    link.onload = resolve;
    link.onerror = () => reject(new Error("its styles could not be fetched"));
  });
  document.head.append(link);
  await loaded;
}

async function drawGround(
  container: HTMLElement,
  { folder }: MapRequest,
  settings: MapSettings,
  words: MapWords,
): Promise<MapLibre> {
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
    cooperativeGestures: true,
    locale: gestureWords(words),
  });
  map.touchZoomRotate.disableRotation();
  map.keyboard.disableRotation();
  map.addImage("hatch", hatchImage(colours.hatch), { pixelRatio: 2 });
  const canvas = map.getCanvas();
  canvas.setAttribute("aria-label", words.say("zoom.canvas"));
  canvas.setAttribute("aria-describedby", "zoom-help");
  await new Promise<void>((resolve, reject) => {
    map.once("load", () => resolve());
    map.on("error", ({ error }) => reject(error));
  });
  return map;
}
