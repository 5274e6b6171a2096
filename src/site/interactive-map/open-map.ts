import { addProtocol, Map as MapLibre, setWorkerUrl } from "maplibre-gl";
import workerUrl from "maplibre-gl/dist/maplibre-gl-worker.mjs?worker&url";
import { Protocol } from "pmtiles";
import type { MapSettings } from "../../publishing/map-folder.ts";
import { joinControls } from "./map-controls.ts";
import { fetchSettings, fetchSquares, fetchTaxon } from "./map-data.ts";
import { element, type MapRequest, type OpenMap, repaint, viewOf } from "./map-session.ts";
import { hatchImage, mapStyle, readColours } from "./map-style.ts";
import { describeView } from "./tell-squares.ts";

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
  const settingsComing = fetchSettings(request.folder);
  const mapComing = settingsComing.then((settings) => drawGround(element(panel, "[data-canvas]"), request, settings));
  const [settings, map, hectads, taxon] = await Promise.all([
    settingsComing,
    mapComing,
    fetchSquares(request.folder, "hectads"),
    fetchTaxon(request.folder, request.slug),
  ]).catch((error: unknown) => {
    void mapComing.then((drawn) => drawn.remove()).catch(() => undefined);
    throw error;
  });
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
