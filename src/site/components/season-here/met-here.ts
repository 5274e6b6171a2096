import type { NeighbourhoodBlock, NeighbourhoodIndex } from "../../../publishing/contracts/neighbourhoods.ts";
import { aroundSquare } from "../narrow/around-square.ts";
import { blockNameOf } from "../narrow/places.ts";
import type { Nearby } from "../narrow/reasons.ts";
import type { MetHere } from "./in-season.ts";

/** What was recorded round a square, by slug. */
export interface RoundSquare {
  readonly met: ReadonlyMap<string, MetHere>;
  readonly nearby: ReadonlyMap<string, Nearby>;
}

/** Files of what was recorded round each square; each is fetched once. */
export class PlaceFiles {
  readonly #folder: string;
  #index: Promise<NeighbourhoodIndex> | undefined;

  /**
   * Nothing is fetched yet.
   *
   * @param folder address of `identify/places/`
   */
  constructor(folder: string) {
    this.#folder = folder;
  }

  /** Which squares there are, and the order of taxa. */
  index(): Promise<NeighbourhoodIndex> {
    this.#index ??= fetchJson<NeighbourhoodIndex>(`${this.#folder}index.json`);
    this.#index.catch(() => {
      this.#index = undefined;
    });
    return this.#index;
  }

  /** What was recorded round a square; undefined for one the atlas does not have. */
  async round(code: string): Promise<RoundSquare | undefined> {
    const index = await this.index();
    const name = blockNameOf(index, code);
    if (name === undefined) return undefined;
    const around = aroundSquare(index, await fetchJson<NeighbourhoodBlock>(`${this.#folder}${name}.json`), code);
    if (around === undefined) return undefined;
    const { frequencies, nearby } = around;
    return { met: metHere(frequencies.here?.shares ?? new Map(), nearby), nearby };
  }
}

/**
 * Shares of visits and records in the square, side by side.
 *
 * @example metHere(new Map([["early", 0.2]]), new Map()).get("early") // { share: 0.2, here: 0 }
 */
export function metHere(
  shares: ReadonlyMap<string, number>,
  nearby: ReadonlyMap<string, Pick<Nearby, "here">>,
): Map<string, MetHere> {
  const slugs = new Set([...shares.keys(), ...nearby.keys()]);
  return new Map([...slugs].map((slug) => [slug, { share: shares.get(slug) ?? 0, here: nearby.get(slug)?.here ?? 0 }]));
}

async function fetchJson<T>(address: string): Promise<T> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return (await answer.json()) as T;
}
