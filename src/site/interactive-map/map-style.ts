import type { ExpressionSpecification, LayerSpecification, StyleSpecification } from "maplibre-gl";

/** Zoom from which 2 km squares stand in for those of 10 km. */
export const TETRAD_ZOOM = 7.4;

/** Layers of the 10 km squares' parts, which give way to those of 2 km squares. */
export const HECTAD_PARTS = ["solid", "open"].flatMap((kind) => [`hectad_spine_${kind}`, `hectad_page_${kind}`]);

/** Colours of the map, from the page's styles. */
export type MapColours = Readonly<
  Record<"paper" | "leaf" | "lake" | "coast" | "rule" | "both" | "new" | "gone" | "part" | "hatch" | "accent", string>
>;

const NAMES = ["paper", "leaf", "lake", "coast", "rule", "both", "new", "gone", "part", "hatch", "accent"] as const;

/** Reads the map's colours from the custom properties of the page. @example readColours(document.documentElement).paper // "#f2f4ef" */
export function readColours(element: Element): MapColours {
  const style = getComputedStyle(element);
  return Object.fromEntries(
    NAMES.map((name) => [name, style.getPropertyValue(`--${name}`).trim() || "#888888"]),
  ) as MapColours;
}

const state = (name: string): ExpressionSpecification => ["feature-state", name];
const solidity: ExpressionSpecification = ["case", ["==", state("solid"), true], ["coalesce", state("tint"), 1], 0];
const isOpen: ExpressionSpecification = ["case", ["==", state("open"), true], 1, 0];
const isHatched: ExpressionSpecification = ["case", ["==", state("hatch"), true], 1, 0];
const isHere: ExpressionSpecification = ["case", ["==", state("here"), true], 1, 0];
const inkOf = (colours: MapColours): ExpressionSpecification => [
  "match",
  ["coalesce", state("ink"), ""],
  "new",
  colours.new,
  "gone",
  colours.gone,
  "part",
  colours.part,
  colours.both,
];

/** The layers a square's parts are drawn in, from the ground up. */
function partLayers(size: "hectad" | "tetrad", colours: MapColours): LayerSpecification[] {
  const zooms = size === "hectad" ? { maxzoom: TETRAD_ZOOM } : { minzoom: TETRAD_ZOOM };
  const parts = ["spine", "page"] as const;
  return [
    ...parts.map(
      (part): LayerSpecification => ({
        id: `${size}_${part}_solid`,
        type: "fill",
        source: "squares",
        "source-layer": `${size}_${part}`,
        ...zooms,
        paint: { "fill-color": inkOf(colours), "fill-opacity": solidity },
      }),
    ),
    ...parts.map(
      (part): LayerSpecification => ({
        id: `${size}_${part}_open`,
        type: "line",
        source: "squares",
        "source-layer": `${size}_${part}`,
        ...zooms,
        paint: {
          "line-color": inkOf(colours),
          "line-opacity": isOpen,
          "line-width": ["interpolate", ["linear"], ["zoom"], 4, 0.7, 7, 1.4, 11, 3],
        },
      }),
    ),
  ];
}

/**
 * The style of the map: squares with land, hatch, sea up to the coast, and the parts of squares painted by feature state. No labels, so
 * nothing is fetched but the tiles.
 *
 * @param archive address of the archive of tiles, absolute
 * @param colours of the page's present theme
 * @param land whether the tiles hold the sea, drawn over squares and hatch up to the coast
 * @returns a style for MapLibre
 * @example mapStyle("https://atlas.example/map/squares.pmtiles", colours, true).sources.squares.type // "vector"
 */
export function mapStyle(archive: string, colours: MapColours, land: boolean): StyleSpecification {
  const ground: LayerSpecification = {
    id: "ground",
    type: "fill",
    source: "squares",
    "source-layer": "hectad_cell",
    paint: { "fill-color": colours.leaf, "fill-antialias": false },
  };
  const hatch = (["spine", "page"] as const).map(
    (part): LayerSpecification => ({
      id: `hectad_${part}_hatch`,
      type: "fill",
      source: "squares",
      "source-layer": `hectad_${part}`,
      paint: { "fill-pattern": "hatch", "fill-opacity": isHatched },
    }),
  );
  const water: LayerSpecification[] = land
    ? [
        { id: "sea", type: "fill", source: "squares", "source-layer": "sea", paint: { "fill-color": colours.paper } },
        {
          id: "lakes",
          type: "fill",
          source: "squares",
          "source-layer": "lakes",
          paint: { "fill-color": colours.lake, "fill-outline-color": colours.coast },
        },
        {
          id: "coast",
          type: "line",
          source: "squares",
          "source-layer": "sea",
          paint: { "line-color": colours.coast, "line-width": 0.8 },
        },
      ]
    : [];
  return {
    version: 8,
    sources: {
      squares: { type: "vector", url: `pmtiles://${archive}` },
      here: { type: "geojson", data: { type: "FeatureCollection", features: [] } },
    },
    layers: [
      { id: "paper", type: "background", paint: { "background-color": colours.paper } },
      ground,
      ...hatch,
      ...water,
      {
        id: "hectad_lines",
        type: "line",
        source: "squares",
        "source-layer": "hectad_cell",
        minzoom: TETRAD_ZOOM,
        paint: { "line-color": colours.rule, "line-width": 1 },
      },
      ...partLayers("hectad", colours),
      ...partLayers("tetrad", colours),
      {
        id: "hectad_cells",
        type: "fill",
        source: "squares",
        "source-layer": "hectad_cell",
        paint: { "fill-color": colours.leaf, "fill-opacity": 0 },
      },
      {
        id: "hectad_here",
        type: "line",
        source: "squares",
        "source-layer": "hectad_cell",
        paint: { "line-color": colours.accent, "line-width": 2.5, "line-opacity": isHere },
      },
      {
        id: "tetrad_here",
        type: "line",
        source: "here",
        minzoom: TETRAD_ZOOM,
        layout: { "line-join": "miter" },
        paint: { "line-color": colours.accent, "line-width": 2.5 },
      },
    ],
  };
}

/**
 * The hatch as an image: lines at 45°, 3 px apart, that join where the image repeats.
 *
 * @param colour hexadecimal, #rrggbb or #rgb
 * @returns RGBA pixels of 12 × 12 for a pixel ratio of 2
 */
export function hatchImage(colour: string): { width: number; height: number; data: Uint8Array } {
  const size = 12;
  const apart = 6;
  const rgb = hexColour(colour);
  const data = new Uint8Array(size * size * 4);
  for (let y = 0; y < size; y += 1) {
    for (let x = 0; x < size; x += 1) {
      const along = (x + y) % apart;
      const alpha = along === 0 ? 255 : along === 1 || along === apart - 1 ? 90 : 0;
      data.set([...rgb, alpha], (y * size + x) * 4);
    }
  }
  return { width: size, height: size, data };
}

function hexColour(colour: string): [number, number, number] {
  const digits = colour.replace("#", "");
  const full = digits.length === 3 ? [...digits].map((digit) => digit + digit).join("") : digits;
  return [0, 2, 4].map((at) => Number.parseInt(full.slice(at, at + 2), 16) || 0) as [number, number, number];
}
