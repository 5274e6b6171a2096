import { isRefusal } from "../../../src/grids/grid.ts";
import { gridNamed } from "../../../src/grids/index.ts";
import type { Random } from "../../demonstration/random.ts";
import { cased, spaced, spoilt, wide } from "../spoil.ts";
import type { Kind, Outcome } from "../trial.ts";

const GRID = gridNamed("laea");
/** Sizes with the zeros that end them, which each number of a code leaves out: Regulation (EU) 1089/2010, Annex II. */
const SIZES: readonly (readonly [label: string, size: number, zeros: number])[] = [
  ["100km", 100_000, 5],
  ["50km", 50_000, 4],
  ["10km", 10_000, 4],
  ["5km", 5_000, 3],
  ["2km", 2_000, 3],
  ["1km", 1_000, 3],
  ["500m", 500, 2],
  ["250m", 250, 1],
  ["100m", 100, 2],
  ["10m", 10, 1],
  ["1m", 1, 0],
];

interface Cell {
  text: string;
  mustRead: boolean;
}

/** Cell codes of the European grid, in both orders, written well and spoilt. */
export const europeanCells: Kind<Cell> = { name: "European cells", share: 0.05, draw, judge };

function draw(random: Random): Cell {
  const [label, size, zeros] = random.pick(SIZES);
  const number = () =>
    (size * random.whole(1_000_000 / size, 6_000_000 / size)).toString().slice(0, -zeros || undefined);
  const [east, north] = [number(), number()];
  const text = random.chance(0.5) ? `${label}E${east}N${north}` : `${label}N${north}E${east}`;
  const way = random.whole(0, 5);
  if (way < 4)
    return { text: [text, cased(random, text), wide(text), spaced(random, text)][way] as string, mustRead: true };
  return { text: spoilt(random, text), mustRead: false };
}

/** The corner and size of a code in plain characters: every character belongs to it. */
function readByHand(text: string): readonly [number, number, number] | undefined {
  const plain = [...text.normalize("NFKC").toLowerCase()].filter((letter) => /[a-z0-9]/.test(letter)).join("");
  for (const [label, size, zeros] of SIZES) {
    if (!plain.startsWith(`${label.toLowerCase()}e`) && !plain.startsWith(`${label.toLowerCase()}n`)) continue;
    const [, a = "", one = "", , two = ""] = /^(.)(\d+)(.)(\d+)$/.exec(plain.slice(label.length)) ?? [];
    const [first, second] = [one, two].map((digits) => Number(digits + "0".repeat(zeros))) as [number, number];
    if (one === "" || two === "") return undefined;
    return a === "e" ? [first, second, size] : [second, first, size];
  }
  return undefined;
}

function judge({ text, mustRead }: Cell): Outcome {
  const answer = GRID.parse(text);
  if (isRefusal(answer)) return mustRead ? { answer: "refused", wrong: answer.refused } : { answer: "refused" };
  const expected = readByHand(text);
  const found = [answer.easting, answer.northing, answer.size];
  const isRight = expected?.every((number, i) => number === found[i]) === true && found.every((number) => number < 1e7);
  return isRight ? { answer: "accepted" } : { answer: "accepted", wrong: `read as ${found}, not ${expected}` };
}
