import type { Grid, GridId, Refusal, Square } from "./grid.ts";
import { isRefusal } from "./grid.ts";
import { GRID_IDS, gridNamed } from "./index.ts";

/** Characters beyond which a text is cut, and refused: what is quoted in a finding must stay readable. */
const LONGEST = 200;

/**
 * Reads a grid reference with the grids an atlas uses. Exactly one grid must accept it: letters of a grid the atlas
 * does not use are refused by that grid's name, and a text good on two grids is refused as ambiguous. A one-letter
 * reference such as H10 may be a vice-county or a compass position in free text; only the caller knows its column.
 *
 * @param text as written
 * @param grids the atlas's grids
 * @returns the square, or one refusal for all grids
 * @throws {RangeError} when there are no grids
 * @example readReference("TQ38", [irishGrid()]); // => { refused: "“TQ38” is a reference of the British National Grid, which this atlas does not use", wayOut: … }
 */
export function readReference(text: string, grids: readonly Grid[]): Square | Refusal {
  return text.length > LONGEST ? readShort(`${text.slice(0, LONGEST)}…`, grids) : readShort(text, grids);
}

function readShort(text: string, grids: readonly Grid[]): Square | Refusal {
  if (grids.length === 0) throw new RangeError("an atlas needs at least one grid to read references with");
  const answers = grids.map((grid) => ({ grid, answer: grid.parse(text) }));
  const accepted = answers.filter(({ answer }) => !isRefusal(answer));
  const [first, second] = accepted;
  if (first !== undefined && second === undefined) return first.answer;
  if (first !== undefined) {
    return {
      refused: `“${text}” is a reference of ${listed(accepted.map(({ grid }) => `the ${grid.name}`))}`,
      wayOut: "say which grid the source uses",
    };
  }
  return (
    ofAnUnusedGrid(text, grids) ??
    likeliestRefusal(
      text,
      answers.map(({ answer }) => answer as Refusal),
      grids,
    )
  );
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names[names.length - 1]}`;
}

function ofAnUnusedGrid(text: string, grids: readonly Grid[]): Refusal | undefined {
  const used = new Set<GridId>(grids.map(({ id }) => id));
  const other = GRID_IDS.filter((id) => !used.has(id)).find((id) => !isRefusal(gridNamed(id).parse(text)));
  if (other === undefined) return undefined;
  return {
    refused: `“${text}” is a reference of the ${gridNamed(other).name}, which this atlas does not use`,
    wayOut: "correct the letters, or add the grid and its territory to the settings",
  };
}

/** With several grids, the refusal of the one whose beginning the text has says most: it is the one that got as far as the figures. */
function likeliestRefusal(text: string, refusals: readonly Refusal[], grids: readonly Grid[]): Refusal {
  const only = refusals[0];
  if (refusals.length === 1 && only !== undefined) return only;
  const beginning = /^[\s]*([A-Za-z]*)/.exec(text)?.[1] ?? "";
  const fitting = grids.findIndex((grid) => beginning !== "" && !isRefusal(grid.parse(beginning)));
  const fit = refusals[fitting];
  if (fit !== undefined) return fit;
  return {
    refused:
      text.trim() === ""
        ? "the reference is empty"
        : `“${text}” is not a reference of ${listed(grids.map(({ name }) => `the ${name}`))}`,
    wayOut: "begin with the letters of a 100 km square and give an even number of figures, as in TQ3877 or O1534",
  };
}
