import { squareHolding } from "./lettering.ts";
import { OVERLAP_ERROR, shareByClipping } from "./overlap.ts";
import { SYSTEMS } from "./projection.ts";

/** The square of a size that a circle supports, null for none; "undecided" closer to a line than the computations agree. */
export function supportedByCircle(
  grid: string,
  [east, north]: readonly [number, number],
  { radius, size, least }: { radius: number; size: number; least: number },
): string | null {
  const tolerance = SYSTEMS[grid]?.tolerance ?? 0;
  const toLine = Math.min(...[east, north].map((metres) => Math.abs(metres - size * Math.round(metres / size))));
  if (toLine <= tolerance) return "undecided";
  const code = squareHolding(grid, east, north, size);
  if (code === undefined) return null;
  const [west, south] = [east, north].map((metres) => size * Math.floor(metres / size)) as [number, number];
  const share = toLine > radius + tolerance ? 1 : shareByClipping(east, north, radius, west, south, size);
  // Moved by the tolerance, a circle gains or loses at most a strip as wide along its diameter; its radius may differ by 2 ‰.
  const doubt = OVERLAP_ERROR + (4 * tolerance) / (Math.PI * radius) + 0.004;
  if (share < 1 && Math.abs(share - least) < doubt) return "undecided";
  if (share === 1 && toLine < radius * 1.002 + tolerance) return "undecided";
  return share >= least ? code : null;
}
