import type { SquareFile, SquareState } from "../../../publishing/contracts.ts";
import { language, say } from "../../words/say.ts";
import { listed } from "../text/words.ts";

/** Letters of the 25 tetrads, in the order of the alphabet; there is no O. */
const LETTERS = "ABCDEFGHIJKLMNPQRSTUVWXYZ";

/**
 * Letters of the tetrads on land that no record to 2 km comes from; of all 25 where the scheme does not say which have
 * land.
 *
 * @example unvisitedTetrads({ tetrads: [{ letter: "A", visits: 2, taxa: 3 }], land_tetrads: "ABM" }) // ["B", "M"]
 */
export function unvisitedTetrads({ tetrads, land_tetrads }: Pick<SquareFile, "tetrads" | "land_tetrads">): string[] {
  const visited = new Set(tetrads.filter(hasRecords).map(({ letter }) => letter));
  return [...LETTERS].filter((letter) => (land_tetrads ?? LETTERS).includes(letter) && !visited.has(letter));
}

function hasRecords({ visits, taxa }: { visits: number; taxa: number }): boolean {
  return visits > 0 || taxa > 0;
}

/**
 * Which tetrads of a hectad have records, which has the longest list, and which have none.
 *
 * @example tetradSentence(square) // "21 of 25 tetrads have records. **F** has the longest list, 9 species. No record to 2 km comes from D, M, U and Z."
 */
export function tetradSentence(square: Pick<SquareFile, "tetrads" | "land_tetrads">): string {
  const visited = square.tetrads.filter(hasRecords);
  if (visited.length === 0) return say("squares.tetrads-none");
  const best = visited.reduce((one, other) => (other.taxa > one.taxa ? other : one));
  const unvisited = unvisitedTetrads(square);
  const said = say("squares.tetrads", {
    ...{ visited: visited.length, letter: best.letter, taxa: best.taxa },
    all: visited.length + unvisited.length,
  });
  return unvisited.length === 0 ? said : `${said} ${say("squares.tetrads-unvisited", { letters: listed(unvisited) })}`;
}

/** The states a square's list can hold, in the order of the key. */
const ORDER: readonly SquareState[] = ["retained", "gained", "lost", "not_comparable_since", "not_comparable_before"];

/**
 * How many taxa of a square are in each state, without the states that none is in.
 *
 * @example countStates([{ state: "lost" }, { state: "lost" }]) // [{ state: "lost", number: 2 }]
 */
export function countStates(
  taxa: readonly { readonly state: SquareState }[],
): { state: SquareState; number: number }[] {
  return ORDER.flatMap((state) => {
    const number = taxa.filter((taxon) => taxon.state === state).length;
    return number === 0 ? [] : [{ state, number }];
  });
}

/**
 * A coordinate in degrees with its hemisphere, two decimals.
 *
 * @param degrees positive to the north or east
 * @example degreesOf(-1.613, "EW") // "1.61° W"
 */
export function degreesOf(degrees: number, signs: "NS" | "EW"): string {
  const [positive, negative] =
    signs === "NS" ? (["squares.north", "squares.south"] as const) : (["squares.east", "squares.west"] as const);
  return say(degrees < 0 ? negative : positive, { degrees: twoDecimals(Math.abs(degrees)) });
}

const formats = new Map<string, Intl.NumberFormat>();

function twoDecimals(number: number): string {
  const tag = language();
  const known = formats.get(tag);
  if (known !== undefined) return known.format(number);
  const made = new Intl.NumberFormat(tag, { minimumFractionDigits: 2, maximumFractionDigits: 2 });
  formats.set(tag, made);
  return made.format(number);
}
