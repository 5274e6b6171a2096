import type { Square } from "../grids/grid.ts";
import { isRefusal } from "../grids/grid.ts";
import { readReference } from "../grids/reference.ts";
import { noteOneLetter } from "./one-letter-reference.ts";
import { type Place, type PlacingRules, type PlacingTerritory, type Unplaced, unplaced } from "./place.ts";

/**
 * Places a record by its grid reference: the square the reference names, in the territory where its grid is used.
 *
 * @returns the square as a place, or why the text names none
 */
export function placeFromReference(text: string, rules: PlacingRules): Place | Unplaced {
  const grids = [...new Set(rules.territories.map((territory) => territory.grid))];
  const square = readReference(text, grids);
  if (isRefusal(square))
    return unplaced("grid_reference_unreadable", "gridReference", text, square.refused, square.wayOut);
  const territory = territoryOfSquare(square, rules.territories);
  if (territory === undefined)
    return unplaced(
      "grid_reference_outside_territory",
      "gridReference",
      text,
      "names a square outside every territory where its grid is used",
      "check the letters; across a border the other territory's grid is used",
    );
  const [longitude, latitude] = territory.grid.unproject(centre(square));
  return {
    territory,
    shape: { kind: "square", square },
    longitude,
    latitude,
    from: "grid reference",
    radiusFrom: "",
    blur: 0,
    notes: square.grid === "irish" ? noteOneLetter(text) : [],
  };
}

/** The territory of a square's grid that holds its centre, else one that holds a corner or the middle of a side. */
export function territoryOfSquare(
  square: Square,
  territories: readonly PlacingTerritory[],
): PlacingTerritory | undefined {
  const own = territories.filter((territory) => territory.grid.id === square.grid);
  for (const [east, north] of [
    [0.5, 0.5],
    [0, 0],
    [1, 0],
    [0, 1],
    [1, 1],
    [0.5, 0],
    [0.5, 1],
    [0, 0.5],
    [1, 0.5],
  ] as const) {
    const point = {
      crs: square.crs,
      easting: square.easting + east * square.size,
      northing: square.northing + north * square.size,
    };
    for (const territory of own) {
      const [longitude, latitude] = territory.grid.unproject(point);
      if (territory.holds(longitude, latitude)) return territory;
    }
  }
  return undefined;
}

function centre(square: Square) {
  return { crs: square.crs, easting: square.easting + square.size / 2, northing: square.northing + square.size / 2 };
}
