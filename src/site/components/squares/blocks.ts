import type { HectadSummary } from "../../../publishing/contracts.ts";

/** One hectad in its block of 100 km: column from the west and row from the top, both 0 to 9. */
export interface BlockCell {
  readonly hectad: HectadSummary;
  readonly column: number;
  readonly row: number;
  /** The hectad's two figures, which name it inside its block. */
  readonly figures: string;
}

/** The hectads of one square of 100 km. */
export interface Block {
  readonly name: string;
  /** Place among the blocks: column from the west, row from the top, both from 0. */
  readonly column: number;
  readonly row: number;
  readonly cells: readonly BlockCell[];
}

const BLOCK = 100_000;
const HECTAD = 10_000;

/**
 * Hectads in blocks of 100 km, the northern blocks first and from west to east, as on a map.
 *
 * @param hectads of one grid, any order
 * @example blocksOf(hectads)[0]?.name // "NZ"
 */
export function blocksOf(hectads: readonly HectadSummary[]): Block[] {
  const blocks = new Map<string, { east: number; north: number; name: string; cells: BlockCell[] }>();
  for (const hectad of hectads) {
    const [east, north] = [Math.floor(hectad.easting / BLOCK), Math.floor(hectad.northing / BLOCK)];
    const key = `${east} ${north}`;
    const [column, up] = [within(hectad.easting), within(hectad.northing)];
    const block = blocks.get(key) ?? { east, north, name: blockName(hectad.square, east, north), cells: [] };
    block.cells.push({ hectad, column, row: 9 - up, figures: `${column}${up}` });
    blocks.set(key, block);
  }
  const made = [...blocks.values()];
  const west = Math.min(...made.map(({ east }) => east));
  const top = Math.max(...made.map(({ north }) => north));
  return made
    .sort((one, other) => other.north - one.north || one.east - other.east)
    .map(({ name, cells, east, north }) => ({
      name,
      column: east - west,
      row: top - north,
      cells: cells.sort((one, other) => one.row - other.row || one.column - other.column),
    }));
}

/** Which tenth of its block a coordinate lies in; grids with an offset origin too, because codes count from it. */
function within(metres: number): number {
  return ((Math.floor(metres / HECTAD) % 10) + 10) % 10;
}

function blockName(code: string, east: number, north: number): string {
  const letters = code.match(/^[A-Z]{1,2}(?=\d\d$)/)?.[0];
  return letters ?? `E${east} N${north}`;
}
