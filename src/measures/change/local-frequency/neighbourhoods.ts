import type { Presence } from "../presence.ts";
import { similarity, taxonBits } from "./similarity.ts";

const EARTH_RADIUS = 6_371_000;
const RINGS = 1000;

/** Where a square's centre is, degrees. */
export interface Position {
  latitude: number;
  longitude: number;
}

/** Neighbours of each square and their weights; those of square i lie from `starts[i]` up to `starts[i + 1]`, itself first. */
export interface Neighbourhoods {
  starts: Int32Array;
  squares: Int32Array;
  weights: Float64Array;
}

/** How many squares a neighbourhood is chosen from, and how many it has. */
export interface NeighbourhoodOptions {
  nearest: number;
  most_similar: number;
}

/**
 * Weight of a neighbour by its rank in distance and in similarity, each 1 for the square itself, falling to 0 beyond the
 * last: (1 − ((d − 1)/D)²)⁴ · (1 − ((s − 1)/S)²)⁴. That ranks begin at 1 − 1 is our reading.
 *
 * @example neighbourWeight(2, 1, { nearest: 200, most_similar: 100 }) // => 0.9999000037499375
 */
export function neighbourWeight(distanceRank: number, similarityRank: number, options: NeighbourhoodOptions): number {
  const fall = (rank: number, size: number) => (1 - ((rank - 1) / size) ** 2) ** 4;
  return fall(distanceRank, options.nearest) * fall(similarityRank, options.most_similar);
}

/**
 * The neighbourhood of every square: of the nearest squares (itself the first) those most similar in the taxa ever
 * recorded, weighted by both ranks.
 *
 * Source: Hill (2012) Methods in Ecology and Evolution 3: 195–205, of which the summary and keywords could be read: that the
 * 200 nearest are considered and the 100 most similar chosen by Sørensen's coefficient is the paper's. The form of the
 * weights is known from descriptions of it; pooling all periods, distance on a sphere between centres, and breaking ties
 * of either rank by distance and then by the order of squares are our readings. Squares number fewer than asked for where
 * there are no more: the weights keep the sizes asked for.
 *
 * @example neighbourhoods([{ latitude: 50, longitude: 0 }], presence, { nearest: 200, most_similar: 100 }).weights // => Float64Array [1]
 */
export function neighbourhoods(
  positions: readonly Position[],
  presence: Presence,
  options: NeighbourhoodOptions,
): Neighbourhoods {
  const lists = taxonBits(presence);
  const points = pointsOnSphere(positions);
  const size = Math.min(options.nearest, options.most_similar, positions.length);
  const found: Neighbourhoods = {
    starts: Int32Array.from({ length: positions.length + 1 }, (_, square) => square * size),
    squares: new Int32Array(positions.length * size),
    weights: new Float64Array(positions.length * size),
  };
  const gaps = new Float64Array(positions.length);
  for (let square = 0; square < positions.length; square++) {
    const near = nearestSquares(points, square, Math.min(options.nearest, positions.length), gaps);
    const similarities = near.map((other) => similarity(lists, square, other));
    const order = near.map((_, rank) => rank);
    // Equally similar squares keep their order by distance; the square itself, whose rank in distance is 0, is always first.
    order.sort(
      (a, b) => Number(b === 0) - Number(a === 0) || (similarities[b] as number) - (similarities[a] as number) || a - b,
    );
    for (let rank = 0; rank < size; rank++) {
      const distanceRank = order[rank] as number;
      found.squares[square * size + rank] = near[distanceRank] as number;
      found.weights[square * size + rank] = neighbourWeight(distanceRank + 1, rank + 1, options);
    }
  }
  return found;
}

/** Unit vectors from the middle of the earth, three numbers a square. */
function pointsOnSphere(positions: readonly Position[]): Float64Array {
  const points = new Float64Array(3 * positions.length);
  positions.forEach(({ latitude, longitude }, square) => {
    const [phi, lambda] = [(latitude * Math.PI) / 180, (longitude * Math.PI) / 180];
    points.set([Math.cos(phi) * Math.cos(lambda), Math.cos(phi) * Math.sin(lambda), Math.sin(phi)], 3 * square);
  });
  return points;
}

/** The nearest squares, itself first; of equally near ones the earlier in order. A chord grows as the arc does. */
function nearestSquares(points: Float64Array, square: number, many: number, gaps: Float64Array): number[] {
  const [x, y, z] = points.subarray(3 * square, 3 * square + 3) as unknown as [number, number, number];
  for (let other = 0; other < gaps.length; other++) {
    const gap =
      ((points[3 * other] as number) - x) ** 2 +
      ((points[3 * other + 1] as number) - y) ** 2 +
      ((points[3 * other + 2] as number) - z) ** 2;
    // To about a metre, lest rounding part squares that are equally near.
    gaps[other] = other === square ? -1 : Math.round(Math.sqrt(gap) * EARTH_RADIUS);
  }
  const limit = limitHolding(gaps, many);
  const near: number[] = [];
  for (let other = 0; other < gaps.length; other++) if ((gaps[other] as number) <= limit) near.push(other);
  return near.sort((a, b) => (gaps[a] as number) - (gaps[b] as number) || a - b).slice(0, many);
}

/** A distance within which lie at least so many squares and few more: all are counted by rings, not sorted. */
function limitHolding(gaps: Float64Array, many: number): number {
  const ring = gaps.reduce((most, gap) => Math.max(most, gap), 1) / RINGS;
  const counts = new Int32Array(RINGS + 1);
  for (const gap of gaps) {
    const at = Math.max(0, Math.floor(gap / ring));
    counts[at] = (counts[at] as number) + 1;
  }
  let [held, outermost] = [0, -1];
  while (held < many) held += counts[++outermost] as number;
  return (outermost + 1) * ring;
}
