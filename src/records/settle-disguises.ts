import type { Place, PlaceNote } from "./place.ts";
import { type Disguise, squareInDisguise } from "./square-in-disguise.ts";

/** Below this chance a point on a square's centre or corner is taken for the square without asking its source. */
const CERTAIN_CHANCE = 0.01;
/** A source writes squares as points when it has this many times more of them than chance would give … */
const FAR_ABOVE_CHANCE = 5;
/** … and at least this many. */
const FEWEST_IN_DISGUISE = 10;

/** A place as it stands in a source. */
interface FoundPlace {
  id: number;
  source: string;
  place: Place;
}

/** A place of which it is settled whether it is a square in disguise. */
export interface SettledPlace extends FoundPlace {
  inDisguise: boolean;
}

interface Waiting extends FoundPlace {
  disguise: Disguise;
}

/**
 * Settles which points are squares in disguise. One that chance would hardly give is settled when it is met; the
 * others wait until all are known, and are squares only where their source has far more of them than chance would give.
 *
 * @example
 * const disguises = settleDisguises();
 * disguises.meet({ id: 1, source: "walks", place }); // => { id: 1, …, inDisguise: false }, or undefined where it waits
 * disguises.rest(); // => those that waited
 */
export function settleDisguises(): { meet(found: FoundPlace): SettledPlace | undefined; rest(): SettledPlace[] } {
  const waiting: Waiting[] = [];
  const candidates = new Map<string, number>();
  return {
    meet(found) {
      const among = candidatesOf(found);
      candidates.set(among, (candidates.get(among) ?? 0) + 1);
      const disguise = squareInDisguise(found.place);
      if (disguise === undefined) return { ...found, inDisguise: false };
      if (disguise.chance < CERTAIN_CHANCE) return unmasked(found, disguise);
      waiting.push({ ...found, disguise });
      return undefined;
    },
    rest: () => settleWaiting(waiting, candidates),
  };
}

/**
 * Says of a point that it was taken for the square it stands for.
 *
 * @returns a note; none for places that are no square in disguise
 * @example disguiseNote({ …, inDisguise: true }).map(({ check }) => check) // => ["square_in_disguise"]
 */
export function disguiseNote({ inDisguise, place: { territory, shape, from } }: SettledPlace): PlaceNote[] {
  if (!inDisguise || shape.kind !== "square") return [];
  return [
    {
      check: "square_in_disguise",
      severity: "note",
      field: from === "coordinates" ? "decimalLatitude" : "easting",
      value: "",
      message: `is the middle or the corner of the square ${territory.grid.format(shape.square)}, and was taken for that square`,
      wayOut: "give the square as a grid reference, or a point as fine as it is known",
    },
  ];
}

/** Places among which chance would have spread those in disguise: the source's points, or its squares of one size. */
function candidatesOf({ source, place: { shape } }: FoundPlace): string {
  return `${source} ${shape.kind === "square" ? shape.square.size : "points"}`;
}

function settleWaiting(waiting: readonly Waiting[], candidates: ReadonlyMap<string, number>): SettledPlace[] {
  const kind = (one: Waiting) => `${candidatesOf(one)} ${one.disguise.square.size}`;
  const seen = new Map<string, { count: number; expected: number }>();
  for (const one of waiting) {
    const tally = seen.get(kind(one)) ?? { count: 0, expected: 0 };
    const expected = (candidates.get(candidatesOf(one)) ?? 0) * one.disguise.chance;
    seen.set(kind(one), { count: tally.count + 1, expected: Math.max(tally.expected, expected) });
  }
  return waiting.map(({ disguise, ...found }) => {
    const { count, expected } = seen.get(kind({ ...found, disguise })) ?? { count: 0, expected: 0 };
    const taken = count >= FEWEST_IN_DISGUISE && count >= FAR_ABOVE_CHANCE * expected;
    return taken ? unmasked(found, disguise) : { ...found, inDisguise: false };
  });
}

/** A disguise never makes a place finer: a point known only to 5 km is no kilometre square, wherever it stands. */
function unmasked(found: FoundPlace, { square }: Disguise): SettledPlace {
  const { shape, radiusFrom, blur } = found.place;
  const vaguer = shape.kind === "circle" && shape.radius > square.size / Math.SQRT2 + blur;
  if (vaguer && radiusFrom !== "default" && radiusFrom !== "digits") return { ...found, inDisguise: false };
  return { ...found, place: { ...found.place, shape: { kind: "square", square } }, inDisguise: true };
}
