import type { PlanRow } from "./body-plan.ts";

/** Units of one row of the figure, and its width: the rows of the table beside it are as high. */
export const ROW = 24;
export const FIGURE_WIDTH = 146;
const BODY_X = 76;

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
 * @param height of the body drawing in its own units
 * @returns coordinates of a figure 146 units wide and 24 units a row high
 * @example placeFigure(rows, 374).height // 288 for twelve rows
 */
export function placeFigure(rows: readonly PlanRow[], height: number): Placing {
  const tall = rows.length * ROW;
  const scale = Math.round((tall / height) * 1000) / 1000;
  const middle = Math.round(tall * 0.49);
  const places = rows.flatMap(({ ring }, index) =>
    ring === undefined
      ? []
      : [{ x: tenth(BODY_X + ring[0] * scale), y: tenth(middle + ring[1] * scale), row: index * ROW + ROW / 2 }],
  );
  return {
    height: tall,
    transform: `translate(${BODY_X} ${middle}) scale(${scale})`,
    path: places.map(({ x, y, row }) => `M${x} ${y}L137 ${row}h9`).join(""),
    rings: places.map(({ x, y }) => [x, y] as const),
  };
}

function tenth(number: number): number {
  return Math.round(number * 10) / 10;
}
