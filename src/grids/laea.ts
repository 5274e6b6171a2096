import { transform } from "../geodesy/transform.ts";
import { tidyReference } from "./figures.ts";
import type { Grid, ProjectedPoint, Refusal, Square, SquareSize } from "./grid.ts";

const CRS = "EPSG:3035";
const WGS84 = "EPSG:4326";

/**
 * Sizes and how they are written: cell size, then the south-west corner divided by 10ⁿ, n the number of zeros that
 * end the size in metres. 1, 10, 100 m and 1, 10, 100 km are the official sizes (Commission Regulation (EU) 1089/2010,
 * Annex II, 2.2.1); the others follow by the rule.
 */
const SIZES: ReadonlyMap<SquareSize, { readonly label: string; readonly divisor: number }> = new Map([
  [100_000, { label: "100km", divisor: 100_000 }],
  [50_000, { label: "50km", divisor: 10_000 }],
  [10_000, { label: "10km", divisor: 10_000 }],
  [5_000, { label: "5km", divisor: 1_000 }],
  [2_000, { label: "2km", divisor: 1_000 }],
  [1_000, { label: "1km", divisor: 1_000 }],
  [500, { label: "500m", divisor: 100 }],
  [250, { label: "250m", divisor: 10 }],
  [100, { label: "100m", divisor: 100 }],
  [10, { label: "10m", divisor: 10 }],
  [1, { label: "1m", divisor: 1 }],
] as const);
const SIZE_BY_LABEL: ReadonlyMap<string, SquareSize> = new Map(
  [...SIZES].map(([size, { label }]) => [label.toUpperCase(), size]),
);
/** Eastings and northings have seven digits over Europe; this refuses a cut or doubled number. Metres. */
const LARGEST = 10_000_000;

const CODE = /^(\d+K?M)(?:E(\d+)N(\d+)|N(\d+)E(\d+))$/;

/**
 * The European reference grid in ETRS89-LAEA (EPSG:3035). Reads cell codes in both orders in use, easting first
 * ("1kmE4695N2599") and northing first ("1kmN2599E4695", the regulation's own), and writes easting first.
 *
 * @returns the grid
 * @example laeaGrid().parse("1kmN2599E4695"); // => { grid: "laea", crs: "EPSG:3035", easting: 4695000, northing: 2599000, size: 1000 }
 */
export function laeaGrid(): Grid {
  return Object.freeze({
    id: "laea",
    name: "European reference grid (ETRS89-LAEA)",
    parse,
    format,
    project: (longitude: number, latitude: number) => {
      const [easting, northing] = transform(WGS84, CRS, longitude, latitude);
      return { crs: CRS, easting, northing };
    },
    unproject: (point: ProjectedPoint) => {
      refuseOtherSystem(point);
      return transform(CRS, WGS84, point.easting, point.northing);
    },
    squareAt: (point: ProjectedPoint, size: SquareSize) => {
      refuseOtherSystem(point);
      if (!SIZES.has(size) || !onGrid(point.easting) || !onGrid(point.northing)) return undefined;
      const floor = (value: number) => Math.floor(value / size) * size;
      return { grid: "laea", crs: CRS, easting: floor(point.easting), northing: floor(point.northing), size };
    },
  } satisfies Grid);
}

function onGrid(value: number): boolean {
  return value >= 0 && value < LARGEST;
}

function refuseOtherSystem(point: ProjectedPoint): void {
  if (point.crs !== CRS)
    throw new Error(`${point.easting} ${point.northing} is in ${point.crs}; the European grid is in ${CRS}`);
}

function parse(text: string): Square | Refusal {
  // E and N part the two numbers, so a space inside one leaves no doubt.
  const tidy = tidyReference(text).replaceAll(" ", "");
  const parts = CODE.exec(tidy);
  if (parts === null) {
    return {
      refused: `“${text.trim()}” is not a cell code of the European grid`,
      wayOut: "write the cell size, E and N with their figures, as in 10kmE324N348",
    };
  }
  const [, label = "", eastFirst, northSecond, northFirst, eastSecond] = parts;
  const size = SIZE_BY_LABEL.get(label);
  if (size === undefined) {
    return {
      refused: `the European grid has no cell size ${label.toLowerCase()}`,
      wayOut: `use one of ${[...SIZES.values()].map((row) => row.label).join(", ")}`,
    };
  }
  const { divisor } = SIZES.get(size) as { divisor: number };
  const easting = Number(eastFirst ?? eastSecond) * divisor;
  const northing = Number(northFirst ?? northSecond) * divisor;
  if (!onGrid(easting) || !onGrid(northing)) {
    return {
      refused: `${easting} m east or ${northing} m north is off the grid`,
      wayOut: `leave out the last ${Math.log10(divisor)} zeros of each number, as in 10kmE324N348`,
    };
  }
  if (easting % size !== 0 || northing % size !== 0) {
    return {
      refused: `no ${label.toLowerCase()} cell begins at ${easting} ${northing}`,
      wayOut: `give a corner that is a multiple of ${size} m`,
    };
  }
  return { grid: "laea", crs: CRS, easting, northing, size };
}

function format(square: Square): string {
  refuseOtherSystem(square);
  const row = SIZES.get(square.size);
  if (row === undefined) throw new RangeError(`the European grid has no cells of ${square.size} m`);
  return `${row.label}E${square.easting / row.divisor}N${square.northing / row.divisor}`;
}
