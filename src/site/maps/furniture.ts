import { type Box, type Frame, overlap, toUnits } from "./frame.ts";
import { numbersText } from "./path-text.ts";

/** Ticks, scale bar and north arrow of a frame. */
export interface Furniture {
  /** Path of the ticks along the four edges. */
  readonly ticks: string;
  /** Metres from one tick to the next. */
  readonly tickStep: number;
  /** Upper left corner of the arrow and bar. */
  readonly at: readonly [x: number, y: number];
  /** Length of the bar, in metres and in units. */
  readonly barMetres: number;
  readonly bar: number;
  /** Height the frame needs, where the bar found no free place in it. */
  readonly height: number;
}

const TICK = 4;
const BLOCK = { width: 112, height: 66 };

/** 1, 2 or 5 times a power of ten: the largest at or below `limit`. @example roundBelow(230) // 200 */
export function roundBelow(limit: number): number {
  const power = 10 ** Math.floor(Math.log10(limit));
  return ([5, 2, 1].find((step) => step * power <= limit) ?? 1) * power;
}

/**
 * Ticks every 100 km where they are 24 to 240 units apart, else every round number that is; arrow and bar in the
 * first free place from the top, at the left or at the right; where there is none, below everything.
 *
 * @param frame the sheet
 * @param occupied points of all that is drawn
 * @param boxes insets
 * @returns the furniture, in units
 * @example furnish(frame, [], []).barMetres // 200_000 where a unit is 2.5 km
 */
export function furnish(
  frame: Frame,
  occupied: readonly (readonly [number, number])[],
  boxes: readonly Box[],
): Furniture {
  const spacing = 100_000 / frame.metresPerUnit;
  const tickStep = spacing >= 24 && spacing <= 240 ? 100_000 : roundBelow(80 * frame.metresPerUnit);
  const barMetres = roundBelow(80.5 * frame.metresPerUnit);
  const free = freePlace(frame, occupied, boxes);
  const at = free ?? ([14, frame.height + 4] as const);
  return {
    ticks: ticksPath(frame, tickStep, boxes),
    tickStep,
    at,
    barMetres,
    bar: barMetres / frame.metresPerUnit,
    height: free ? frame.height : frame.height + 4 + BLOCK.height,
  };
}

function freePlace(
  frame: Frame,
  occupied: readonly (readonly [number, number])[],
  boxes: readonly Box[],
): readonly [number, number] | undefined {
  for (let y = 28; y + BLOCK.height < frame.height; y += 8) {
    for (const x of [14, frame.width - BLOCK.width - 8]) {
      const block: Box = { left: x - 6, top: y, right: x + BLOCK.width, bottom: y + BLOCK.height };
      if (boxes.some((box) => overlap(box, block))) continue;
      if (!occupied.some(([px, py]) => px > block.left && px < block.right && py > block.top && py < block.bottom))
        return [x, y];
    }
  }
  return undefined;
}

function ticksPath(frame: Frame, step: number, boxes: readonly Box[]): string {
  const { width, height, west, north, metresPerUnit } = frame;
  const columns = multiples(west, west + width * metresPerUnit, step).map((easting) => toUnits(frame, easting, 0)[0]);
  const rows = multiples(north - height * metresPerUnit, north, step).map((northing) => toUnits(frame, 0, northing)[1]);
  const clear = (x: number, y: number) =>
    !boxes.some(
      (box) => x >= box.left - TICK && x <= box.right + TICK && y >= box.top - TICK && y <= box.bottom + TICK,
    );
  const upright = columns.flatMap((x) => [
    clear(x, 0) ? `M${numbersText([x, 0], 1)}v${TICK}` : "",
    clear(x, height) ? `M${numbersText([x, height], 1)}v-${TICK}` : "",
  ]);
  const level = rows.flatMap((y) => [
    clear(0, y) ? `M${numbersText([0, y], 1)}h${TICK}` : "",
    clear(width, y) ? `M${numbersText([width, y], 1)}h-${TICK}` : "",
  ]);
  return [...upright, ...level].join("");
}

/** Multiples of a step strictly between two numbers. */
function multiples(from: number, to: number, step: number): number[] {
  const first = Math.floor(from / step) + 1;
  const last = Math.ceil(to / step) - 1;
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step);
}

/**
 * The arrow and the bar as SVG, in units of the frame.
 *
 * @param furniture of the frame
 * @returns a group of class "map-furniture": lines, "N", 0 and the bar's length in km
 * @example furnitureSvg(furniture) // '<g class="map-furniture"><path d="M14 …'
 */
export function furnitureSvg({ at: [x, y], bar, barMetres }: Furniture): string {
  const n = (...values: number[]) => numbersText(values, 1);
  const base = y + 40;
  const arrow = `M${n(x, y + 24)}v-24l-2.8 6M${n(x, y)}l2.8 6`;
  const scale = `M${n(x, base - 3)}v3h${n(bar)}v-3M${n(x + bar / 2, base)}v-2`;
  const label = barMetres >= 1000 ? `${barMetres / 1000} km` : `${barMetres} m`;
  return (
    `<g class="map-furniture"><path d="${arrow}${scale}"/><text x="${n(x + 6)}" y="${n(y + 8)}">N</text>` +
    `<text x="${n(x)}" y="${n(base + 13)}">0</text><text x="${n(x + bar)}" y="${n(base + 13)}" text-anchor="middle">${label}</text></g>`
  );
}
