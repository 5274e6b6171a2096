import type { DeskAnswer, MapAnswer, RecordAnswer } from "../../../review/desk/answers.ts";
import { ask } from "./ask.ts";
import { counted, drawn, element } from "./dom.ts";

const lands = new Map<string, Promise<{ path: string }>>();

/** Width of the map in pixels, about: marks that must not shrink are made by it. */
const PIXELS = 400;

/** The record against the squares of its taxon. */
export async function mapFigure(map: MapAnswer, record: RecordAnswer, desk: DeskAnswer): Promise<HTMLElement> {
  const land = await (lands.get(map.crs) ?? keepLand(map.crs));
  return element(
    "figure",
    { class: "map" },
    element("p", { class: "say" }, ...sentence(map, record, desk)),
    drawing(map, land.path, record),
    key(map, desk),
  );
}

function keepLand(crs: string): Promise<{ path: string }> {
  const land = ask<{ path: string }>(`land?crs=${encodeURIComponent(crs)}`);
  lands.set(crs, land);
  return land;
}

function sentence(map: MapAnswer, { taxon }: RecordAnswer, { group }: DeskAnswer): (string | HTMLElement)[] {
  if (taxon === null) return [`Squares with any ${group.one}: the name was not read.`];
  if (map.squares === 0) return ["No other square in use has it."];
  const others = counted(map.squares, "other square");
  if (map.nearest === null) return [`No place was read. ${others} in use.`];
  const { square, km } = map.nearest;
  const far = km < 15 ? "in or beside its own square" : `${Math.round(km)} km from here`;
  return ["Nearest square in use: ", element("b", {}, square), `, ${far}; ${others} in all.`];
}

function drawing(map: MapAnswer, land: string, { taxon }: RecordAnswer): SVGElement {
  const [x, y, width, height] = map.view;
  const pixel = width / PIXELS;
  const path = (className: string, d: string, more = {}) => d !== "" && drawn("path", { class: className, d, ...more });
  return drawn(
    "svg",
    { viewBox: map.view.join(" "), role: "img", "aria-labelledby": "map-title map-words" },
    drawn("title", { id: "map-title" }, `Where is ${taxon?.name ?? "this record"} among the squares in use?`),
    drawn("desc", { id: "map-words" }, described(map)),
    drawn(
      "defs",
      {},
      drawn(
        "pattern",
        {
          id: "hatch",
          width: 5 * pixel,
          height: 5 * pixel,
          patternUnits: "userSpaceOnUse",
          patternTransform: "rotate(45)",
        },
        drawn("path", { class: "hatch", d: `M0 0V${5 * pixel}` }),
      ),
      drawn(
        "clipPath",
        { id: "on-land" },
        drawn("path", { d: land === "" ? `M${x} ${y}h${width}v${height}h${-width}z` : land }),
      ),
    ),
    path("ground", land),
    path("hatched", land, { fill: "url(#hatch)" }),
    path("visited", map.visited, { "clip-path": "url(#on-land)" }),
    path("coast", land),
    path("square", map.both),
    path("square", map.earlier),
    path("square", map.recent),
    path("proposed", map.proposed),
    map.nearest !== null &&
      map.nearest.km > 15 &&
      map.middle !== null &&
      drawn("path", { class: "distance", d: `M${map.middle.join(" ")}L${map.nearest.at.join(" ")}` }),
    path("here", map.here),
    map.middle !== null && ring(map.middle, 9 * pixel),
  );
}

/** A square outline around the record, of one size at any scale. */
function ring([x, y]: [number, number], half: number): SVGElement {
  return drawn("rect", { class: "here-ring", x: x - half, y: y - half, width: 2 * half, height: 2 * half });
}

function described({ squares, nearest, middle }: MapAnswer): string {
  const where = middle === null ? "The record has no place that could be read." : "The record stands in the middle.";
  return `${where} ${counted(squares, "other square")} in use.${nearest === null ? "" : ` The nearest is ${nearest.square}.`}`;
}

function key(map: MapAnswer, { periods: [earlier, recent], group, credit }: DeskAnswer): HTMLElement {
  const glyph = (className: string, d: string) =>
    drawn("svg", { class: "glyph", viewBox: "0 0 4 4", "aria-hidden": "true" }, drawn("path", { class: className, d }));
  const item = (mark: SVGElement, words: string) => element("li", {}, mark, words);
  return element(
    "figcaption",
    {},
    element(
      "ul",
      { class: "key" },
      item(glyph("square", "M.25 .25h3.5v3.5h-3.5z"), earlier === "" ? recent : "both periods"),
      earlier !== "" && item(glyph("square", "M.25 .25h1.25v3.5h-1.25z"), `${earlier} alone`),
      earlier !== "" && item(glyph("square", "M1.5 .25h2.25v3.5h-2.25z"), `${recent} alone`),
      item(glyph("hatch", "M0 4L4 0M0 2L2 0M2 4L4 2"), `no ${group.one} in use`),
    ),
    element(
      "p",
      {},
      `The map is ${Math.round(map.view[2])} km wide. A blank square has records of others, however few: it says little. ${credit}`,
    ),
  );
}
