/** 10 km squares of the atlas for a reference, a position or a click: by the published index, on the device. */
import type { NeighbourhoodIndex } from "../../../publishing/contracts/neighbourhoods.ts";
import { degreesOfText } from "../find/degrees-of-text.ts";
import { hectadOfReference } from "../find/hectad-of-reference.ts";

/** Answer to a text or position: a square of the atlas, one it does not have, or neither. */
export type PlaceAnswer = { readonly square: string } | { readonly elsewhere: string } | { readonly unknown: true };

/**
 * Name of the block a square is in.
 *
 * @returns undefined for a square the atlas does not have
 * @example blockNameOf(index, "NZ27") // "british-4-5"
 */
export function blockNameOf(
  { blocks, squares }: Pick<NeighbourhoodIndex, "blocks" | "squares">,
  code: string,
): string | undefined {
  const block = squares.findIndex((codes) => ` ${codes} `.includes(` ${code} `));
  return block < 0 ? undefined : blocks[block];
}

/**
 * The square a text means: a reference to 10 km or finer of any grid of the atlas, or a position in degrees.
 *
 * @example await placeOfText("nz 257 714", index) // { square: "NZ27" }
 */
export async function placeOfText(text: string, index: NeighbourhoodIndex): Promise<PlaceAnswer> {
  const alone = hectadOfReference(text);
  if (alone !== undefined && blockNameOf(index, alone) !== undefined) return { square: alone };
  const degrees = degreesOfText(text);
  const { squaresAt, squaresOfReference } = await import("../find/squares-at.ts");
  const codes = degrees === undefined ? squaresOfReference(text, index.grids) : squaresAt(degrees, index.grids);
  return firstOf(codes, index);
}

/**
 * The square of a position of the device.
 *
 * @example await placeOfDegrees({ latitude: 54.978, longitude: -1.617 }, index) // { square: "NZ26" }
 */
export async function placeOfDegrees(
  degrees: { readonly latitude: number; readonly longitude: number },
  index: NeighbourhoodIndex,
): Promise<PlaceAnswer> {
  const { squaresAt } = await import("../find/squares-at.ts");
  return firstOf(squaresAt(degrees, index.grids), index);
}

function firstOf(codes: readonly string[], index: NeighbourhoodIndex): PlaceAnswer {
  const square = codes.find((code) => blockNameOf(index, code) !== undefined);
  if (square !== undefined) return { square };
  return codes[0] === undefined ? { unknown: true } : { elsewhere: codes[0] };
}
