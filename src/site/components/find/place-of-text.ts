import { type Degrees, degreesOfText } from "./degrees-of-text.ts";
import { hectadOfReference } from "./hectad-of-reference.ts";
import { hasSquare, type SearchFile } from "./search-file.ts";

/** What a text says of a place: squares that have a page, or that it is a place outside them. */
export interface PlaceFound {
  readonly squares: readonly string[];
  /** A square it names that has no page; empty where there is none. */
  readonly without: string;
}

/**
 * The squares a text means: a grid reference of any grid of the atlas and any precision from 10 km, or a position in
 * degrees. The grids are loaded only where the text alone does not tell.
 *
 * @param text as typed
 * @param file squares that have a page, and the atlas's grids
 * @returns undefined for a text that is no place
 * @example (await placeOfText("nz 2574 6412", file))?.squares // ["NZ26"]
 */
export async function placeOfText(
  text: string,
  { squares, grids }: Pick<SearchFile, "squares" | "grids">,
): Promise<PlaceFound | undefined> {
  if (!/\d/.test(text)) return undefined;
  const alone = hectadOfReference(text);
  if (alone !== undefined && hasSquare(squares, alone)) return { squares: [alone], without: "" };
  const degrees = degreesOfText(text);
  if (degrees !== undefined) return await placeOfDegrees(degrees, { squares, grids });
  if (alone !== undefined) return { squares: [], without: alone };
  if (!/^[\dA-Za-z][\dA-Za-z\s,.]*$/.test(text.trim()) || !/[A-Za-z]/.test(text) || text.trim().length > 30)
    return undefined;
  const { squaresOfReference } = await import("./squares-at.ts");
  return among(squaresOfReference(text, grids), squares);
}

/** The squares of a position. @example (await placeOfDegrees({ latitude: 54.978, longitude: -1.617 }, file)).squares // ["NZ26"] */
export async function placeOfDegrees(
  degrees: Degrees,
  { squares, grids }: Pick<SearchFile, "squares" | "grids">,
): Promise<PlaceFound> {
  const { squaresAt } = await import("./squares-at.ts");
  return among(squaresAt(degrees, grids), squares) ?? { squares: [], without: "" };
}

function among(codes: readonly string[], squares: SearchFile["squares"]): PlaceFound | undefined {
  if (codes.length === 0) return undefined;
  const there = codes.filter((code) => hasSquare(squares, code));
  return { squares: there, without: there.length === 0 ? (codes[0] ?? "") : "" };
}
