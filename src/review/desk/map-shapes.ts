import type { InterpretedRow } from "./record.ts";
import { type Point, pathOf, type Sheet } from "./sheet.ts";

/** How far a drawn square keeps from its cell's sides, as a share of the cell. */
export const EDGE = 0.25 / 4;
/** Where the spine ends and the page begins. */
export const FOLD = 1.5 / 4;

/** The part of a square from one share of its width to another, with a narrow margin above and below. */
export function partOf(corners: readonly Point[], from: number, to: number): Point[] {
  const [sw = [0, 0], nw = [0, 0], ne = [0, 0], se = [0, 0]] = corners;
  const margin = from === 0 ? 0 : EDGE;
  const on = (across: number, up: number): Point => {
    const mix = (axis: 0 | 1) => {
      const low = sw[axis] + (se[axis] - sw[axis]) * across;
      const high = nw[axis] + (ne[axis] - nw[axis]) * across;
      return low + (high - low) * up;
    };
    return [mix(0), mix(1)];
  };
  return [on(from, margin), on(from, 1 - margin), on(to, 1 - margin), on(to, margin)];
}

/** The middle of some points; undefined without any. */
export function centreOf(points: readonly Point[]): Point | undefined {
  if (points.length === 0) return undefined;
  const mean = (axis: 0 | 1) => points.reduce((sum, point) => sum + point[axis], 0) / points.length;
  return [mean(0), mean(1)];
}

/** What the record itself covers: its square, or its circle as a path of two arcs. */
export function outlineOf(sheet: Sheet, row: InterpretedRow, here: Point | undefined): string {
  const { longitude, latitude, size_m, radius_m, territory } = row;
  if (here === undefined || longitude === null || latitude === null) return "";
  if (size_m !== null) return pathOf(sheet.around(territory ?? "", longitude, latitude, size_m));
  const r = Math.max(0.05, (radius_m ?? 0) / 1000);
  const [x, y] = here;
  const n = (value: number) => value.toFixed(2);
  return `M${n(x - r)} ${n(y)}a${n(r)} ${n(r)} 0 1 0 ${n(2 * r)} 0a${n(r)} ${n(r)} 0 1 0 ${n(-2 * r)} 0Z`;
}
