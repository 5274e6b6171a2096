import type { BodyPlan, PlanRow } from "./body-plan.ts";

/** Units of one row of the figure: the rows of the table beside it are as high. */
export const ROW = 24;
/** A leader ends level with its row for so many units before the figure's edge. */
const LEVEL = 9;

/** A placed figure: where the body stands, how it is scaled, and its leaders. */
export interface Placing {
  readonly height: number;
  readonly transform: string;
  readonly path: string;
  readonly rings: readonly (readonly [x: number, y: number])[];
}

/**
 * Places a body beside its rows and draws a leader from the ring of each part to the middle of its row.
 *
 * @param rows that are shown, in their order
 * @param plan height of the drawing in its own units; width of the figure, where its axis and its zero stand in it
 * @returns coordinates of a figure as wide as the plan says and 24 units a row high
 * @example placeFigure(rows, bee).height // 288 for twelve rows
 */
export function placeFigure(
  rows: readonly PlanRow[],
  { height, width, axis, zero }: Pick<BodyPlan, "height" | "width" | "axis" | "zero">,
): Placing {
  const tall = rows.length * ROW;
  const scale = Math.round((tall / height) * 1000) / 1000;
  const middle = Math.round(tall * zero);
  const places = rows.flatMap(({ ring }, index) =>
    ring === undefined
      ? []
      : [{ x: tenth(axis + ring[0] * scale), y: tenth(middle + ring[1] * scale), row: index * ROW + ROW / 2 }],
  );
  return {
    height: tall,
    transform: `translate(${axis} ${middle}) scale(${scale})`,
    path: places.map(({ x, y, row }) => `M${x} ${y}L${width - LEVEL} ${row}h${LEVEL}`).join(""),
    rings: places.map(({ x, y }) => [x, y] as const),
  };
}

/** Whether a row is a numbered segment. @example isSegment("S4") // true @example isSegment("wings") // false */
export function isSegment(part: string): boolean {
  return /^[A-Z]\d+$/i.test(part);
}

function tenth(number: number): number {
  return Math.round(number * 10) / 10;
}
