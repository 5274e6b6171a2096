import { fetchTaxon, fetchVisits } from "./map-data.ts";
import { element, markHere, type OpenMap, repaint, say, viewOf } from "./map-session.ts";
import { hatchImage, mapStyle, readColours } from "./map-style.ts";
import { describeView, find, listSquares, showSquare, tell } from "./tell-squares.ts";

/** Milliseconds a move takes, unless the reader wants no motion. */
const MOVE = 250;

/** Joins buttons, period, species, keyboard, search, list and closing to the map. */
export function joinControls(open: OpenMap): void {
  const duration = matchMedia("(prefers-reduced-motion: reduce)").matches ? 0 : MOVE;
  joinButtons(open, duration);
  joinChoices(open);
  const { map, panel, request } = open;
  const stopFollowing = followTheme(open);
  map.getCanvas().addEventListener("keydown", (event) => {
    if (event.key !== "Enter") return;
    event.preventDefault();
    const { clientWidth, clientHeight } = map.getContainer();
    void tell(open, [clientWidth / 2, clientHeight / 2]);
  });
  map.on("click", ({ point }) => void tell(open, [point.x, point.y]));
  map.on("moveend", () => describeView(open));
  map.on("idle", () => open.here && markHere(map, open.here, true));
  element<HTMLFormElement>(panel, "[data-find]").addEventListener("submit", (event) => {
    event.preventDefault();
    void find(open, element<HTMLInputElement>(panel, "[data-code]").value, duration);
  });
  element<HTMLDetailsElement>(panel, "[data-list]").addEventListener("toggle", () => void listSquares(open));
  element<HTMLButtonElement>(panel, "[data-close]").addEventListener("click", () => {
    stopFollowing();
    map.remove();
    request.close();
  });
}

function joinButtons({ map, panel, settings }: OpenMap, duration: number): void {
  const step = (x: number, y: number) => {
    const { clientWidth, clientHeight } = map.getContainer();
    map.panBy([x * clientWidth * 0.3, y * clientHeight * 0.3], { duration });
  };
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
}

function joinChoices(open: OpenMap): void {
  const { panel, settings, words } = open;
  for (const radio of panel.querySelectorAll<HTMLInputElement>('input[type="radio"]')) {
    radio.checked = radio.value === open.viewValue;
    radio.addEventListener("change", () => void showView(open, radio.value));
  }
  const species = element<HTMLSelectElement>(panel, "[data-taxon]");
  species.replaceChildren(
    ...settings.taxa.map(({ slug }) => new Option(words.nameOf(slug), slug, slug === open.slug, slug === open.slug)),
  );
  species.addEventListener("change", () => void showTaxon(open, species.value));
}

/** Shows a choice of the panel; the visits are fetched when they are first chosen. */
export async function showView(open: OpenMap, value: string): Promise<void> {
  if (value === "visits") {
    open.visits ??= await fetchVisits(open.request.folder).catch(() => undefined);
    if (open.visits === undefined) return say(open, open.words.say("zoom.unfetched-tetrads"));
  }
  open.viewValue = value;
  open.view = viewOf(value, open.settings);
  repaint(open);
  await open.map.once("idle");
  describeView(open);
  if (open.here) await showSquare(open, open.here.size, open.here.id);
}

async function showTaxon(open: OpenMap, slug: string): Promise<void> {
  const taxon = await fetchTaxon(open.request.folder, slug, open.words.nameOf(slug)).catch(() => undefined);
  if (element<HTMLSelectElement>(open.panel, "[data-taxon]").value !== slug) return;
  if (!taxon) return say(open, open.words.say("zoom.unfetched-species"));
  open.taxon = taxon;
  open.slug = slug;
  repaint(open);
  describeView(open);
  if (open.here) await showSquare(open, open.here.size, open.here.id);
}

/** Colours follow the page when the reader's theme changes; gives what ends that. */
function followTheme({ map, settings, request }: OpenMap): () => void {
  const theme = matchMedia("(prefers-color-scheme: dark)");
  const recolour = () => {
    const colours = readColours(document.documentElement);
    map.updateImage("hatch", hatchImage(colours.hatch));
    const style = mapStyle(new URL(`${request.folder}squares.pmtiles`, location.href).href, colours, settings.land);
    for (const layer of style.layers) {
      for (const [name, value] of Object.entries(layer.paint ?? {}))
        map.setPaintProperty(layer.id, name as never, value as never);
    }
  };
  theme.addEventListener("change", recolour);
  return () => theme.removeEventListener("change", recolour);
}
