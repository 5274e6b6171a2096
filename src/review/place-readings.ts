import { coordinateSystem } from "../geodesy/coordinate-systems.ts";
import { isUnplaced, type Place, type PlaceFields, type PlacingRules } from "../records/place.ts";
import { NATIONAL_PROJECTIONS } from "../records/place-from-projected.ts";
import { readPlace } from "../records/read-place.ts";

/** A place read otherwise than it was written, as if one slip had been made, and which. */
export interface PlaceReading {
  slip: string;
  place: Place;
}

/**
 * Places a text would name had one common slip not been made: two figures that stand side by side exchanged, easting and
 * northing exchanged, the letters of another 100 km square, a lost sign. Which slips are common is practice among those
 * who check records; no source.
 *
 * @param near where the record is looked for: its 100 km square lends the letters
 * @returns readings that name a place of the atlas; the place as written is not among them
 * @example otherReadings({ ...fields, gridReference: "SP5060" }, rules, oxford).map(({ slip }) => slip) // => ["two figures exchanged", …]
 */
export function otherReadings(
  fields: PlaceFields,
  rules: PlacingRules,
  near: { longitude: number; latitude: number },
): PlaceReading[] {
  return [...variants(fields, rules, near)].flatMap(([slip, changed]) => {
    const place = readPlace({ ...fields, ...changed }, rules);
    return isUnplaced(place) ? [] : [{ slip, place }];
  });
}

function* variants(
  fields: PlaceFields,
  rules: PlacingRules,
  near: { longitude: number; latitude: number },
): Generator<[slip: string, changed: Partial<PlaceFields>]> {
  const { gridReference, decimalLatitude, decimalLongitude, easting, northing } = fields;
  const exchanged = "two figures exchanged";
  if (gridReference !== "") {
    for (const text of neighboursExchanged(gridReference)) yield [exchanged, { gridReference: text }];
    const halves = /^([A-Za-z]+)(\d+)$/.exec(gridReference.replaceAll(/\s/g, ""));
    const [letters = "", figures = ""] = halves?.slice(1) ?? [];
    const half = figures.length / 2;
    if (halves !== null && Number.isInteger(half))
      yield [
        "easting and northing exchanged",
        { gridReference: letters + figures.slice(half) + figures.slice(0, half) },
      ];
    for (const other of lettersNear(rules, near))
      if (other !== letters.toUpperCase())
        yield [`the letters ${other}`, { gridReference: gridReference.replace(/^\s*[A-Za-z]+/, other) }];
  } else if (decimalLatitude !== "") {
    for (const text of neighboursExchanged(decimalLatitude)) yield [exchanged, { decimalLatitude: text }];
    for (const text of neighboursExchanged(decimalLongitude)) yield [exchanged, { decimalLongitude: text }];
    const turned = decimalLongitude.trim().startsWith("-")
      ? decimalLongitude.trim().slice(1)
      : `-${decimalLongitude.trim()}`;
    yield ["the other sign of longitude", { decimalLongitude: turned }];
  } else {
    for (const text of neighboursExchanged(easting)) yield [exchanged, { easting: text }];
    for (const text of neighboursExchanged(northing)) yield [exchanged, { northing: text }];
    yield ["easting and northing exchanged", { easting: northing, northing: easting }];
  }
}

/** Every text that differs by two different figures side by side exchanged; spaces between them do not part them. */
function* neighboursExchanged(text: string): Generator<string> {
  const places = [...text.matchAll(/\d/g)].map(({ index }) => index);
  for (const [order, at] of places.entries()) {
    const next = places[order + 1];
    if (next === undefined || text[at] === text[next] || /[^\s\d]/.test(text.slice(at, next))) continue;
    yield text.slice(0, at) + text.charAt(next) + text.slice(at + 1, next) + text.charAt(at) + text.slice(next + 1);
  }
}

/** Letters of the 100 km squares, one a grid, that hold a position. */
function lettersNear(rules: PlacingRules, { longitude, latitude }: { longitude: number; latitude: number }): string[] {
  return rules.territories.flatMap(({ grid, holds }) => {
    if (!holds(longitude, latitude)) return [];
    const square = grid.squareAt(grid.project(longitude, latitude), 100_000);
    return square === undefined ? [] : [grid.format(square)];
  });
}

/**
 * Places of an easting and northing had they been written in another coordinate system than the source's.
 *
 * @returns one reading a system in which they lie in the atlas; none where no easting is given
 * @example projectionReadings({ ...fields, easting: "715830", northing: "734697" }, irishGridRules)[0].slip // => "IRENET95 / Irish Transverse Mercator"
 */
export function projectionReadings(fields: PlaceFields, rules: PlacingRules): PlaceReading[] {
  if (fields.easting === "" || fields.gridReference !== "" || fields.decimalLatitude !== "") return [];
  return NATIONAL_PROJECTIONS.filter((crs) => crs !== rules.crs).flatMap((crs) => {
    const place = readPlace(fields, { ...rules, crs });
    return isUnplaced(place) ? [] : [{ slip: coordinateSystem(crs).name, place }];
  });
}

/**
 * A place as the grid reference of the square that is as fine as it is known.
 *
 * @returns the reference; empty outside the grid
 */
export function referenceOf({ territory: { grid }, shape }: Place): string {
  if (shape.kind === "square") return grid.format(shape.square);
  const size = shape.radius <= 100 ? 100 : shape.radius <= 1_000 ? 1_000 : 10_000;
  const square = grid.squareAt(shape.point, size);
  return square === undefined ? "" : grid.format(square);
}
