import type { Square } from "../../../src/grids/grid.ts";
import { isRefusal } from "../../../src/grids/grid.ts";
import { gridNamed } from "../../../src/grids/index.ts";
import { readReference } from "../../../src/grids/reference.ts";
import { parentOf } from "../../../src/grids/squares.ts";
import type { Random } from "../../demonstration/random.ts";
import { HUNDREDS, squareHolding } from "../oracle/lettering.ts";
import { readByTable } from "../oracle/read-letters.ts";
import { cased, confused, long, spaced, spoilt, wide } from "../spoil.ts";
import type { Kind, Outcome } from "../trial.ts";

const LETTERED = ["british", "irish", "channel-islands"] as const;
const GRIDS = Object.fromEntries(LETTERED.map((id) => [id, gridNamed(id)]));
const ALL = Object.values(GRIDS);
const TETRADS = "ABCDEFGHIJKLMNPQRSTUVWXYZ";
const QUARTERS = ["SW", "NW", "SE", "NE"];

interface Reference {
  text: string;
  /** Which grids the atlas has. */
  grids: readonly string[];
  /** Such a text must be read, whatever else it may be. */
  mustRead: boolean;
}

/** References of the three lettered grids as people write and spoil them, read with one grid or with all three. */
export const references: Kind<Reference> = { name: "grid references", share: 0.3, draw, judge };

function draw(random: Random): Reference {
  const grid = random.pick(LETTERED);
  const letters = random.pick(Object.keys(HUNDREDS[grid] ?? {}));
  const half = random.whole(0, 5);
  const digits = (count: number) => Array.from({ length: count }, () => random.whole(0, 9)).join("");
  const [east, north] = [digits(half), digits(half)];
  const ending = half === 1 && random.chance(0.5) ? random.pick([...TETRADS, ...QUARTERS]) : "";
  const grids = random.chance(0.5) ? LETTERED : [grid];
  const whole = letters + east + north + ending;
  const way = random.whole(0, 9);
  const benign = [
    whole,
    cased(random, `${letters} ${east} ${north} ${ending}`.trim()),
    wide(`${letters} ${east}${north}${ending}`),
    half > 0 ? `${letters} ${east},${random.pick(["", " "])}${north}${ending}` : whole,
    `${random.pick([" ", "\t", "\uFEFF", "\u200F"])}${whole}${random.pick([".", ",", " ", "\u202C"])}`,
  ];
  const text = benign[way];
  if (text !== undefined) return { text, grids, mustRead: true };
  return { text: nasty(random, { letters, east, north, ending, way }), grids, mustRead: false };
}

function nasty(
  random: Random,
  { letters, east, north, ending, way }: { letters: string; east: string; north: string; ending: string; way: number },
): string {
  const whole = letters + east + north + ending;
  if (way === 5) return confused(random, whole);
  if (way === 6) return spaced(random, whole);
  if (way === 7) return `${letters} ${east} ${north.slice(0, -1)}${ending}`;
  if (way === 8)
    return random.pick([
      `H${random.whole(1, 41)}`,
      `${random.pick(["N", "W", "S", "E"])} ${random.whole(0, 61)} ${random.whole(0, 61)}`,
      `N${random.whole(49, 61)} W${random.whole(0, 11)}`,
      `${east}${north}`,
      `${letters}-${east}-${north}`,
      `${letters} ${east}.${random.whole(0, 9)} ${north}.${random.whole(0, 9)}`,
      random.chance(0.01) ? long(random, whole) : whole.replace(/\d/, "٣"),
    ]);
  return spoilt(random, random.chance(0.5) ? whole : `${letters} ${east} ${north}${ending}`);
}

function judge({ text, grids, mustRead }: Reference): Outcome {
  const expected = grids
    .map((grid) => ({ grid, square: readByTable(grid, text) }))
    .filter(({ square }) => square !== undefined);
  const answer = readReference(
    text,
    ALL.filter(({ id }) => grids.includes(id)),
  );
  if (isRefusal(answer)) {
    if (answer.refused.length > 600) return { answer: "refused", wrong: "the refusal quotes a text of any length" };
    return mustRead ? { answer: "refused", wrong: `refused: ${answer.refused}` } : { answer: "refused" };
  }
  const [only] = expected;
  if (expected.length !== 1 || only?.square === undefined)
    return { answer: "accepted", wrong: `read as ${JSON.stringify(answer)}, where ${expected.length} grids have it` };
  const { east, north, size } = only.square;
  if (answer.grid !== only.grid || answer.easting !== east || answer.northing !== north || answer.size !== size)
    return { answer: "accepted", wrong: `read as ${JSON.stringify(answer)}, not ${JSON.stringify(only)}` };
  const wrong = wrongSquares(answer);
  return wrong === undefined ? { answer: "accepted" } : { answer: "accepted", wrong };
}

/** The reference written back, and the 10 km and 2 km squares it lies in, against slices of its figures. */
function wrongSquares(square: Square): string | undefined {
  const grid = GRIDS[square.grid];
  if (grid === undefined) return `of the grid ${square.grid}`;
  const again = readByTable(square.grid, grid.format(square));
  if (again?.east !== square.easting || again.north !== square.northing || again.size !== square.size)
    return `written as ${grid.format(square)}`;
  for (const size of [10_000, 2_000] as const) {
    const parent = parentOf(grid, square, size);
    const isInside = square.size <= size && (size === 10_000 || square.size !== 5_000);
    const expected = isInside ? squareHolding(square.grid, square.easting, square.northing, size) : undefined;
    const found = parent === undefined ? undefined : grid.format(parent);
    if (found !== expected) return `lies in ${found} and not ${expected}`;
  }
  return undefined;
}
