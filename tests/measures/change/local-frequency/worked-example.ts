import type { Neighbourhoods } from "../../../../src/measures/change/local-frequency/neighbourhoods.ts";
import type { Presence } from "../../../../src/measures/change/presence.ts";
import { readReferenceFile } from "../../../support/reference.ts";

const REFERENCE = readReferenceFile<{
  PHI: number;
  RSTAR: number;
  species: string[];
  records: string[][];
  neighbours: [square: number, weight: number][][];
  expected: {
    phi: number[];
    alpha: number[];
    N: number[];
    benchmark: number[][];
    fprime_loc1: number[];
    s: number[][];
    n: number[][];
    x: number[][];
    se_delta: number[][];
  };
}>("local-frequency.json");

export const OPTIONS = { standard_frequency: REFERENCE.PHI, benchmark_share: REFERENCE.RSTAR };
export const EXPECTED = REFERENCE.expected;

/** Records of 24 taxa in 36 squares and two periods. */
export const PRESENCE: Presence = {
  taxa: REFERENCE.species,
  squares: REFERENCE.neighbours.map((_, square) => `s${String(square).padStart(2, "0")}`),
  periods: REFERENCE.records.length,
  recorded: Uint8Array.from(REFERENCE.records.flat().join(""), Number),
};

/** The neighbours of each square, which the reference states with their weights. */
export const NEIGHBOURS: Neighbourhoods = laid(REFERENCE.neighbours);

function laid(lists: readonly (readonly [square: number, weight: number][])[]): Neighbourhoods {
  let end = 0;
  return {
    starts: Int32Array.from([0, ...lists.map((list) => (end += list.length))]),
    squares: Int32Array.from(lists.flat(), ([square]) => square),
    weights: Float64Array.from(lists.flat(), ([, weight]) => weight),
  };
}

/** The same records with taxa and squares in reverse order. */
export function reordered(
  presence: Presence,
  neighbours: Neighbourhoods,
): { presence: Presence; neighbours: Neighbourhoods } {
  const { taxa, squares, periods, recorded } = presence;
  const size = taxa.length * squares.length;
  const turned = Array.from({ length: periods }, (_, period) =>
    [...recorded.subarray(period * size, (period + 1) * size)].reverse(),
  );
  const lists = squares.map((_, square) => {
    const [from, to] = [neighbours.starts[square], neighbours.starts[square + 1]];
    const weights = neighbours.weights.subarray(from, to);
    return [...neighbours.squares.subarray(from, to)].map((other, at): [number, number] => [
      squares.length - 1 - other,
      weights[at] as number,
    ]);
  });
  return { presence: { ...presence, recorded: Uint8Array.from(turned.flat()) }, neighbours: laid(lists.reverse()) };
}
