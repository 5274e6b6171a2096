import other from "mgrs";
import { isRefusal, type Square } from "../../../src/grids/grid.ts";
import { gridNamed } from "../../../src/grids/index.ts";
import { centreOf } from "../../../src/grids/squares.ts";
import type { Random } from "../../demonstration/random.ts";
import { cased, confused, spoilt, wide } from "../spoil.ts";
import type { Kind, Outcome } from "../trial.ts";

const GRID = gridNamed("mgrs");

/** MGRS references of the whole globe, written by another program and read back by it, and spoilt ones. */
export const military: Kind<string> = { name: "MGRS references", share: 0.05, draw, judge };

function draw(random: Random): string {
  const [longitude, latitude] = [random.between(-180, 180), random.between(-79.9, 83.9)];
  const text = other.forward([longitude, latitude], random.whole(1, 5));
  const ways = [cased(random, text), wide(text), confused(random, text), spoilt(random, text), spoilt(random, text)];
  return ways[random.whole(0, 7)] ?? text;
}

function judge(text: string): Outcome {
  const answer = GRID.parse(text);
  if (isRefusal(answer)) return { answer: "refused" };
  if (text.length > 200) return { answer: "accepted", wrong: "read a text of more than 200 characters" };
  const plain = text
    .normalize("NFKC")
    .toUpperCase()
    .replaceAll(/[^A-Z0-9]/g, "");
  if (/[A-Z]$/.test(plain)) return { answer: "accepted", undecided: true };
  const apart = distance(answer, other.toPoint(plain));
  // The other program's inverse is good to a metre or so, and gives the middle of the square.
  const isRight = apart < answer.size / 10 + 3;
  return isRight
    ? { answer: "accepted" }
    : { answer: "accepted", wrong: `${Math.round(apart)} m from the other's middle` };
}

/** Metres between a square's middle and a position. */
function distance(square: Square, [longitude, latitude]: [number, number]): number {
  const [x, y] = GRID.unproject(centreOf(square));
  const east = ((((x - longitude + 540) % 360) + 360) % 360) - 180;
  return Math.hypot(east * 111_320 * Math.cos((latitude * Math.PI) / 180), (y - latitude) * 111_200);
}
