import type { AtlasFile } from "../../../publishing/contracts.ts";
import type { AtlasMap } from "../atlas-map.ts";
import { type Box, boxAround } from "../frame.ts";
import { cellCorners, type PlacedHectad } from "../placement.ts";

/** A part of the atlas that the large map shows by itself. */
export interface Place {
  /** Territory id, or "all". */
  readonly territory: string;
  /** Which part of a tall territory, from the north; "" for the whole. */
  readonly part: "" | "north" | "middle" | "south";
  /** What of the frame is shown, in its units. */
  readonly box: Box;
  readonly hectads: readonly PlacedHectad[];
}

const MARGIN = 5;
/** A territory taller than this, in units, is shown in parts, so that squares of 2 km can be told apart. */
const TALL = 230;
const PARTS = { 1: [""], 2: ["north", "south"], 3: ["north", "middle", "south"] } as const;

/**
 * The places of the large map: the whole atlas, then each territory, a tall one in two or three parts from the north.
 *
 * @param map layout of the atlas's maps
 * @param atlas its territories, in their order
 * @returns the whole alone where there is one territory and it is not tall
 * @example placesOf(map, atlas).map(({ territory, part }) => territory + part) // ["all", "britainnorth", …, "ireland"]
 */
export function placesOf(map: AtlasMap, { territories }: Pick<AtlasFile, "territories">): Place[] {
  const { width, height } = map.frame;
  const whole: Place = {
    territory: "all",
    part: "",
    box: { left: 0, top: 0, right: width, bottom: height },
    hectads: map.hectads,
  };
  const parts = territories.flatMap(({ id }) =>
    partsOf(
      map,
      id,
      map.hectads.filter(({ territory }) => territory === id),
    ),
  );
  return parts.length < 2 ? [whole] : [whole, ...parts];
}

function partsOf(map: AtlasMap, territory: string, hectads: readonly PlacedHectad[]): Place[] {
  const box = boxOf(map, hectads);
  if (box.right < box.left) return [];
  const height = box.bottom - box.top;
  const names = PARTS[Math.min(3, Math.ceil(height / TALL)) as 1 | 2 | 3];
  const partOf = (hectad: PlacedHectad) => {
    const { top, bottom } = boxOf(map, [hectad]);
    return Math.min(
      names.length - 1,
      Math.max(0, Math.floor((((top + bottom) / 2 - box.top) / height) * names.length)),
    );
  };
  return names.flatMap((part, index): Place[] => {
    const own = hectads.filter((hectad) => partOf(hectad) === index);
    return own.length === 0 ? [] : [{ territory, part, box: withMargin(boxOf(map, own)), hectads: own }];
  });
}

/** Box of squares where they are drawn, those of insets in their inset. */
function boxOf(map: AtlasMap, hectads: readonly PlacedHectad[]): Box {
  return boxAround(
    hectads.flatMap(({ square }) => {
      const at = map.locate(square, 10_000);
      return at === undefined ? [] : cellCorners(at.placement, at.cell);
    }),
  );
}

function withMargin({ left, top, right, bottom }: Box): Box {
  return {
    left: Math.floor(left - MARGIN),
    top: Math.floor(top - MARGIN),
    right: Math.ceil(right + MARGIN),
    bottom: Math.ceil(bottom + MARGIN),
  };
}
