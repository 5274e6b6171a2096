import { type Land, TETRAD, type Territory, type Tetrad } from "./land.ts";
import { smooth } from "./noise.ts";
import { saltOf } from "./random.ts";

/** What the invented bees find in a 2 km square. Each of the surfaces runs from 0 to 1. */
export interface Surroundings {
  readonly territory: Territory;
  /** Kilometres of the common plane: the south coast is near y = 100, the far north near 1,200. */
  readonly x: number;
  readonly y: number;
  /** 1 on the south coast, less to the north and on hills. */
  readonly warmth: number;
  /** Hills: 0 lowland, above 0.5 moor. */
  readonly height: number;
  /** Share of sea within 5 km. */
  readonly coast: number;
  /** Flower-rich grassland. */
  readonly flowers: number;
  /** Heath and bog. */
  readonly heath: number;
  /** Woods, gardens and hedges. */
  readonly cover: number;
}

/** Rough hills of the invented land: middle and reach in kilometres of the common plane, and height. */
const HILLS: readonly (readonly [x: number, y: number, reachX: number, reachY: number, height: number])[] = [
  [235, 790, 75, 95, 1],
  [265, 600, 75, 30, 0.6],
  [390, 480, 26, 90, 0.65],
  [325, 510, 22, 20, 0.75],
  [280, 290, 34, 75, 0.7],
  [263, 78, 16, 16, 0.55],
  [285, 140, 18, 10, 0.45],
  [475, 495, 20, 14, 0.45],
  [110, 395, 14, 22, 0.65],
  [-130, 265, 30, 18, 0.7],
  [-120, 440, 25, 40, 0.55],
  [-20, 555, 35, 25, 0.6],
  [60, 540, 28, 20, 0.5],
  [145, 495, 12, 10, 0.6],
];

/**
 * The invented surroundings of every land square: smooth hills, warmth that falls to the north, patches of habitat.
 * Nothing here was measured.
 *
 * @param seed of the demonstration
 * @returns one entry a square, in the order of `land.tetrads`
 * @example surroundingsOf(readLand(), 1)[0]?.territory // "britain"
 */
export function surroundingsOf(land: Land, seed: number): Surroundings[] {
  const salts = {
    hills: saltOf(`${seed}/hills`),
    flowers: saltOf(`${seed}/flowers`),
    heath: saltOf(`${seed}/heath`),
    cover: saltOf(`${seed}/cover`),
  };
  return land.tetrads.map((tetrad) => {
    const { territory, x, y } = tetrad;
    const height = Math.min(1, hills(x, y) * (0.6 + 0.8 * smooth(x, y, 12, salts.hills)));
    const flowers = 0.6 * smooth(x, y, 36, salts.flowers) + 0.4 * smooth(x, y, 7, salts.flowers + 1);
    const heath = Math.min(1, 0.5 * height + 0.7 * smooth(x, y, 26, salts.heath) ** 2);
    const cover = smooth(x, y, 18, salts.cover) * (1 - 0.7 * height);
    const warmth = Math.max(0, Math.min(1, 1.08 - y / 1150 - 0.3 * height));
    return { territory, x, y, warmth, height, coast: seaAround(land, tetrad), flowers, heath, cover };
  });
}

function hills(x: number, y: number): number {
  let height = 0;
  for (const [middleX, middleY, reachX, reachY, top] of HILLS) {
    const distance = ((x - middleX) / reachX) ** 2 + ((y - middleY) / reachY) ** 2;
    height += distance < 9 ? top * Math.exp(-distance) : 0;
  }
  return height;
}

/** Share of eight squares, 4 km away on all sides, that are not land. */
function seaAround(land: Land, { territory, easting, northing }: Tetrad): number {
  let sea = 0;
  for (let east = -2; east <= 2; east += 2) {
    for (let north = -2; north <= 2; north += 2) {
      sea += land.tetradAt(territory, easting + east * TETRAD, northing + north * TETRAD) ? 0 : 1 / 8;
    }
  }
  return sea;
}
