import type { RecordedSquare } from "./map-data.ts";
import { describeLink, linkPage } from "./map-link.ts";
import { element, markHere, type OpenMap, say, tetradBook } from "./map-session.ts";
import { TETRAD_ZOOM } from "./map-style.ts";
import { squareWords, uncoveredWords, viewWords, visitWords } from "./square-words.ts";
import { visitedInView, visitsInWords, visitsOf } from "./visits-in-view.ts";

const UNFETCHED = "zoom.unfetched-tetrads";
const LONGEST_LIST = 60;

const isFine = ({ map, taxon, view }: Pick<OpenMap, "map" | "taxon" | "view">) =>
  (view.kind === "visits" || !taxon.shownAt10km) && map.getZoom() >= TETRAD_ZOOM;

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
        .find(({ id }) => open.view.kind === "visits" || open.taxon.tetrads.has(Number(id)))
    : undefined;
  const hectad = map.queryRenderedFeatures(point, { layers: ["hectad_cells"] })[0];
  if (recorded) return showSquare(open, "tetrad", Number(recorded.id));
  if (hectad) return showSquare(open, "hectad", Number(hectad.id));
  say(open, open.words.say("zoom.nothing-there"));
}

/** Outlines a square and tells of it. */
export async function showSquare(open: OpenMap, size: "hectad" | "tetrad", id: number): Promise<void> {
  const { map, taxon, settings, words } = open;
  if (open.here) markHere(map, open.here, false);
  open.here = { size, id };
  markHere(map, open.here, true);
  const book = size === "hectad" ? open.hectads : await tetradBook(open).catch(() => undefined);
  if (!book) return say(open, words.say(UNFETCHED));
  const code = book.codes[id - book.first] ?? "";
  const square = (size === "hectad" ? taxon.hectads : taxon.tetrads).get(id);
  const context = { ...words, periods: settings.periods };
  say(
    open,
    open.view.kind === "visits"
      ? visitWords(code, visitsOf(open, size, id - book.first), context)
      : square || size === "tetrad"
        ? squareWords(code, square, taxon, size === "hectad" ? 10_000 : 2_000, context)
        : uncoveredWords(code, taxon.uncovered.get(id), taxon, context, settings.compared),
  );
  open.hereCode = code;
  linkPage(open, code);
  describeLink(open);
}

/** Moves to a square by its code and tells of it; spaces and case do not matter. */
export async function find(open: OpenMap, text: string, duration: number): Promise<void> {
  const code = text.replace(/\s+/g, "").toUpperCase();
  const inHectads = open.hectads.ids.get(code);
  const book = inHectads === undefined ? await tetradBook(open).catch(() => undefined) : open.hectads;
  if (!book) return say(open, open.words.say(UNFETCHED));
  const id = inHectads ?? book.ids.get(code);
  const middle = id === undefined ? undefined : book.middle(id);
  if (id === undefined || !middle) {
    const { say: words } = open.words;
    return say(
      open,
      words("zoom.no-square", { text: text.trim() || words("zoom.that"), example: open.hectads.codes[0] ?? "" }),
    );
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
  if (open.view.kind === "visits") return { size, ids: visitedInView(open, part) };
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
  const distance = size === "tetrads" ? "2 km" : "10 km";
  const { words, settings } = open;
  element(open.panel, "[data-view]").textContent =
    open.view.kind === "visits"
      ? visitsInWords(open, ids.length, size === "tetrads")
      : viewWords(open.taxon, open.view, ids.length, distance, { ...words, periods: settings.periods });
  describeLink(open);
  void listSquares(open);
}

/** Lists the squares in view as buttons, at most sixty. */
export async function listSquares(open: OpenMap): Promise<void> {
  const details = element<HTMLDetailsElement>(open.panel, "[data-list]");
  if (!details.open) return;
  const { size, ids } = recordedInView(open);
  const book = size === "hectads" ? open.hectads : await tetradBook(open).catch(() => undefined);
  if (!book) return say(open, open.words.say(UNFETCHED));
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
    rest.textContent = open.words.say("zoom.more", { n: ids.length - LONGEST_LIST });
    items.push(rest);
  }
  element(details, "ul").replaceChildren(...items);
}
