import type { RecordedSquare } from "./map-data.ts";
import { element, markHere, type OpenMap, say, tetradBook } from "./map-session.ts";
import { TETRAD_ZOOM } from "./map-style.ts";
import { squareWords, uncoveredWords, viewWords } from "./square-words.ts";

const UNFETCHED = "The list of 2 km squares could not be fetched. Try again when you are online.";
const LONGEST_LIST = 60;

const isFine = ({ map, taxon }: Pick<OpenMap, "map" | "taxon">) => !taxon.shownAt10km && map.getZoom() >= TETRAD_ZOOM;

/** Tells of the square at a point of the map, in pixels: the 2 km square if it holds a record, else the one of 10 km. */
export async function tell(open: OpenMap, point: [number, number]): Promise<void> {
  const { map } = open;
  const fine = isFine(open);
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

/** Outlines a square and tells of it. */
export async function showSquare(open: OpenMap, size: "hectad" | "tetrad", id: number): Promise<void> {
  const { map, taxon, settings } = open;
  if (open.here) markHere(map, open.here, false);
  open.here = { size, id };
  markHere(map, open.here, true);
  const book = size === "hectad" ? open.hectads : await tetradBook(open).catch(() => undefined);
  if (!book) return say(open, UNFETCHED);
  const code = book.codes[id - book.first] ?? "This square";
  const square = (size === "hectad" ? taxon.hectads : taxon.tetrads).get(id);
  const words =
    square || size === "tetrad"
      ? squareWords(code, square, taxon, size === "hectad" ? 10_000 : 2_000, settings)
      : uncoveredWords(code, taxon.uncovered.get(id), taxon, settings, settings.compared);
  say(open, words);
}

/** Moves to a square by its code and tells of it; spaces and case do not matter. */
export async function find(open: OpenMap, text: string, duration: number): Promise<void> {
  const code = text.replace(/\s+/g, "").toUpperCase();
  const inHectads = open.hectads.ids.get(code);
  const book = inHectads === undefined ? await tetradBook(open).catch(() => undefined) : open.hectads;
  if (!book) return say(open, UNFETCHED);
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
  const size = isFine(open) ? "tetrads" : "hectads";
  const part = size === "tetrads" ? "tetrad" : "hectad";
  const seen = open.map
    .queryRenderedFeatures({ layers: [`${part}_spine_solid`, `${part}_page_solid`] })
    .map(({ id }) => Number(id));
  const shown = (square: RecordedSquare | undefined) =>
    square !== undefined && (open.view.kind !== "single" || (square.records[open.view.period] ?? 0) > 0);
  return { size, ids: [...new Set(seen)].filter((id) => shown(open.taxon[size].get(id))).toSorted((a, b) => a - b) };
}

/** Says what is in view, and lists it where the list is open. */
export function describeView(open: OpenMap): void {
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

/** Lists the squares in view as buttons, at most sixty. */
export async function listSquares(open: OpenMap): Promise<void> {
  const details = element<HTMLDetailsElement>(open.panel, "[data-list]");
  if (!details.open) return;
  const { size, ids } = recordedInView(open);
  const book = size === "hectads" ? open.hectads : await tetradBook(open).catch(() => undefined);
  if (!book) return say(open, UNFETCHED);
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
