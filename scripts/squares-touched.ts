/** A point in metres of one projected grid. */
export type Metres = readonly [easting: number, northing: number];

/** A square's key is its column times this, plus its row, both counted from the grid's origin. */
const BITS = 65_536;

/**
 * The squares of one side that a polygon touches: those its outline passes through and those wholly inside.
 * Exact up to the straightness of the projected edges; a square that only shares its western or southern side
 * with the polygon counts, as a grid gives a point on a line to the square north and east of it.
 *
 * @param rings outline and holes in metres (even–odd rule), each closed, each coordinate from 0 up to 65,536 × `side`
 * @param side side of a square in metres
 * @returns keys for `columnOf` and `rowOf`, in no order; empty for no rings
 * @example squaresTouched([[[100, 100], [900, 100], [900, 900], [100, 100]]], 1000) // Set { 0 }
 */
export function squaresTouched(rings: readonly (readonly Metres[])[], side: number): Set<number> {
  const touched = new Set<number>();
  const scaled = rings.map((ring) => ring.map(([easting, northing]): Metres => [easting / side, northing / side]));
  for (const ring of scaled) {
    for (let i = 1; i < ring.length; i++) {
      markEdge(touched, ring[i - 1] as Metres, ring[i] as Metres);
    }
  }
  markInside(touched, scaled);
  return touched;
}

/** Column of a key of `squaresTouched`, from 0. @example columnOf(65_537 * 2) // 2 */
export function columnOf(key: number): number {
  return Math.floor(key / BITS);
}

/** Row of a key of `squaresTouched`, from 0. @example rowOf(65_537 * 2) // 2 */
export function rowOf(key: number): number {
  return key % BITS;
}

/** Marks each square an edge passes through: cut at every grid line, the middle of each piece lies in one square. */
function markEdge(touched: Set<number>, [x1, y1]: Metres, [x2, y2]: Metres): void {
  const cuts = [0, 1, ...crossings(x1, x2), ...crossings(y1, y2)].sort((a, b) => a - b);
  for (let i = 1; i < cuts.length; i++) {
    const middle = ((cuts[i - 1] as number) + (cuts[i] as number)) / 2;
    mark(touched, x1 + (x2 - x1) * middle, y1 + (y2 - y1) * middle);
  }
  mark(touched, x1, y1);
}

/** Where, from 0 to 1 along the way, a coordinate passes a whole number. */
function crossings(from: number, to: number): number[] {
  const parts: number[] = [];
  for (let line = Math.ceil(Math.min(from, to)); line <= Math.max(from, to); line++) {
    if (from !== to) {
      parts.push((line - from) / (to - from));
    }
  }
  return parts;
}

/** Marks the squares whose middle is inside, row by row; those the outline leaves out are wholly inside. */
function markInside(touched: Set<number>, rings: readonly (readonly Metres[])[]): void {
  const crossed = new Map<number, number[]>();
  for (const ring of rings) {
    for (let i = 1; i < ring.length; i++) {
      crossRows(crossed, ring[i - 1] as Metres, ring[i] as Metres);
    }
  }
  for (const [row, columns] of crossed) {
    columns.sort((a, b) => a - b);
    for (let i = 0; i + 1 < columns.length; i += 2) {
      for (let column = Math.ceil((columns[i] as number) - 0.5); column + 0.5 < (columns[i + 1] as number); column++) {
        touched.add(column * BITS + row);
      }
    }
  }
}

function crossRows(crossed: Map<number, number[]>, [x1, y1]: Metres, [x2, y2]: Metres): void {
  const low = Math.min(y1, y2);
  const high = Math.max(y1, y2);
  for (let row = Math.ceil(low - 0.5); row + 0.5 < high; row++) {
    const column = x1 + ((row + 0.5 - y1) / (y2 - y1)) * (x2 - x1);
    const columns = crossed.get(row);
    if (columns) {
      columns.push(column);
    } else {
      crossed.set(row, [column]);
    }
  }
}

function mark(touched: Set<number>, x: number, y: number): void {
  touched.add(Math.floor(x) * BITS + Math.floor(y));
}
