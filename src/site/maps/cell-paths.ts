import { CELL, type CellShape } from "./book-cell.ts";
import { numbersText, numberText } from "./path-text.ts";

/** A cell of a grid on a map: column from the west, row from the north, both from 0. */
export interface Cell {
  readonly column: number;
  readonly row: number;
}

const DECIMALS = 3;

/** The same cells by row, then column, each once. */
function inReadingOrder(cells: readonly Cell[]): Cell[] {
  const sorted = cells.toSorted((a, b) => a.row - b.row || a.column - b.column);
  return sorted.filter((cell, i) => cell.row !== sorted[i - 1]?.row || cell.column !== sorted[i - 1]?.column);
}

/**
 * Path of one shape drawn in each cell, in units of four to a cell; a hole turns the other way round, so the
 * usual fill rule leaves it open.
 *
 * @param cells in any order; a cell given twice is drawn once
 * @param shape what to draw, within the cell
 * @returns the path's text, "" without cells
 * @example shapesPath([{ column: 2, row: 0 }], { x: 0.25, y: 0.25, width: 3.5, height: 3.5 }) // "M8.25.25h3.5v3.5h-3.5z"
 */
export function shapesPath(cells: readonly Cell[], shape: CellShape): string {
  const { width, height, hole } = shape;
  const n = (value: number) => numberText(value, DECIMALS);
  const outline = `h${n(width)}v${n(height)}h${n(-width)}z`;
  const window =
    hole &&
    `m${numbersText([hole.x - shape.x, hole.y - shape.y], DECIMALS)}v${n(hole.height)}h${n(hole.width)}v${n(-hole.height)}z`;
  let text = "";
  let [penX, penY] = [0, 0];
  for (const { column, row } of inReadingOrder(cells)) {
    const [x, y] = [column * CELL + shape.x, row * CELL + shape.y];
    text += text === "" ? `M${numbersText([x, y], DECIMALS)}` : `m${numbersText([x - penX, y - penY], DECIMALS)}`;
    text += outline + (window ?? "");
    [penX, penY] = hole ? [column * CELL + hole.x, row * CELL + hole.y] : [x, y];
  }
  return text;
}

/**
 * Path of horizontal strokes through the middle of cells, neighbours joined into one run. Painted as wide as a
 * cell is high, it fills whole cells.
 *
 * @param cells in any order; a cell given twice counts once
 * @param unit side of a cell in units of the path
 * @returns the path's text, "" without cells
 * @example runsPath([{ column: 0, row: 0 }, { column: 1, row: 0 }, { column: 3, row: 0 }], 4) // "M0 2h8m4 0h4"
 */
export function runsPath(cells: readonly Cell[], unit: number = CELL): string {
  return strokes(
    joinNeighbours(inReadingOrder(cells)).map(({ column, row, length }) => ({
      x: column * unit,
      y: (row + 0.5) * unit,
      length: length * unit,
    })),
  );
}

function joinNeighbours(cells: readonly Cell[]): { column: number; row: number; length: number }[] {
  const runs: { column: number; row: number; length: number }[] = [];
  for (const { column, row } of cells) {
    const last = runs.at(-1);
    if (last && last.row === row && last.column + last.length === column) last.length += 1;
    else runs.push({ column, row, length: 1 });
  }
  return runs;
}

function strokes(lines: readonly { x: number; y: number; length: number }[]): string {
  let text = "";
  let [penX, penY] = [0, 0];
  for (const { x, y, length } of lines) {
    text += text === "" ? `M${numbersText([x, y], DECIMALS)}` : `m${numbersText([x - penX, y - penY], DECIMALS)}`;
    text += `h${numberText(length, DECIMALS)}`;
    [penX, penY] = [x + length, y];
  }
  return text;
}
