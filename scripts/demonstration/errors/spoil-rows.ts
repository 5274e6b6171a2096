import type { Random } from "../random.ts";
import type { Row, Source } from "../source.ts";
import { areaErrors } from "./area.ts";
import { dateErrors } from "./date.ts";
import type { Correction, ErrorKind } from "./error-kind.ts";
import { nameErrors } from "./name.ts";
import { placeErrors } from "./place.ts";
import { textErrors } from "./text.ts";

/** One error put into a row on purpose. */
export interface KnownError extends Correction {
  readonly kind: string;
  /** Index of the row in its source, from 0. */
  readonly index: number;
}

/** Every known kind of error. */
export const ERROR_KINDS: readonly ErrorKind[] = [
  ...placeErrors,
  ...dateErrors,
  ...nameErrors,
  ...textErrors,
  ...areaErrors,
];

/** How far a card looks for a row that lends itself. */
const SEARCH = 3000;

/**
 * Puts errors into the rows of one source, at most one a row. Kinds come from a shuffled deck that is dealt out before
 * it is shuffled anew, so that all kinds appear; kinds with a share of their own follow.
 *
 * @param rows changed in place
 * @returns what was done, in the order of the rows
 * @example spoilRows(walks, rows, random).length / rows.length // about 0.009
 */
export function spoilRows(source: Source, rows: readonly Row[], random: Random): KnownError[] {
  const wanted = Math.round(rows.length * source.errorShare);
  const kinds = ERROR_KINDS.filter((kind) => kind.fits(source));
  const deck = new Deck(
    kinds.filter(({ share }) => share === undefined),
    random,
  );
  const spoilt = new Map<number, KnownError>();
  const put = (kind: ErrorKind): void => {
    const error = spoilOne(kind, rows, spoilt, random);
    if (error) {
      spoilt.set(error.index, error);
    }
  };
  for (let i = 0; i < wanted; i++) {
    put(deck.deal());
  }
  for (const kind of kinds) {
    for (let i = 0; i < Math.ceil(rows.length * (kind.share ?? 0)); i++) {
      put(kind);
    }
  }
  return [...spoilt.values()].sort((a, b) => a.index - b.index);
}

function spoilOne(
  kind: ErrorKind,
  rows: readonly Row[],
  spoilt: ReadonlyMap<number, KnownError>,
  random: Random,
): KnownError | undefined {
  const start = random.whole(0, rows.length - 1);
  for (let step = 0; step < Math.min(SEARCH, rows.length); step++) {
    const index = (start + step) % rows.length;
    const correction = spoilt.has(index) ? undefined : kind.spoil(rows[index] as Row, random);
    if (correction) {
      return { kind: kind.kind, index, ...correction };
    }
  }
  return undefined;
}

/** First one card of each kind, then all cards shuffled, again and again. */
class Deck {
  readonly #kinds: readonly ErrorKind[];
  readonly #random: Random;
  #cards: ErrorKind[];

  constructor(kinds: readonly ErrorKind[], random: Random) {
    this.#kinds = kinds;
    this.#random = random;
    this.#cards = shuffled(kinds, random);
  }

  deal(): ErrorKind {
    if (this.#cards.length === 0) {
      this.#cards = shuffled(
        this.#kinds.flatMap((kind) => Array.from({ length: kind.cards }, () => kind)),
        this.#random,
      );
    }
    return this.#cards.pop() as ErrorKind;
  }
}

function shuffled<T>(list: readonly T[], random: Random): T[] {
  const cards = [...list];
  for (let i = cards.length - 1; i > 0; i--) {
    const j = random.whole(0, i);
    [cards[i], cards[j]] = [cards[j] as T, cards[i] as T];
  }
  return cards;
}
