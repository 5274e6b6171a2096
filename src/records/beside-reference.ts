import { projectOn } from "./on-grid.ts";
import { isUnplaced, type Place, type PlaceFields, type PlaceNote, type PlacingRules } from "./place.ts";
import { placeFromCoordinates } from "./place-from-coordinates.ts";
import { placeFromProjected } from "./place-from-projected.ts";
import { statedRadius } from "./radius.ts";

/**
 * What the other fields of a place say against its grid reference: an uncertainty nobody can have or larger than the
 * square, and coordinates that lie outside it however far they may be off. The reference counts all the same.
 *
 * @param place as read from the reference
 * @returns notes; none where all agree or nothing else is given
 * @example besideReference(SP5006, { ...fields, decimalLatitude: "57.1", decimalLongitude: "-2.1" }, rules).map(({ check }) => check) // => ["place_fields_disagree"]
 */
export function besideReference(place: Place, fields: PlaceFields, rules: PlacingRules): PlaceNote[] {
  const notes: PlaceNote[] = [];
  if (place.shape.kind !== "square") return notes;
  const { square } = place.shape;
  const radius = statedRadius(fields.coordinateUncertaintyInMeters, notes);
  if (radius !== undefined && radius > square.size)
    notes.push({
      check: "uncertainty_above_square",
      severity: "note",
      field: "coordinateUncertaintyInMeters",
      value: fields.coordinateUncertaintyInMeters,
      message: `is more than the ${square.size} m of the square ${fields.gridReference} names; the square was used`,
      wayOut: "give the reference of a square as large as the place is uncertain",
    });
  const other = otherPlace(fields, rules);
  if (other === undefined) return notes;
  const metres = Math.round(metresOutside(place, other));
  if (metres > 0)
    notes.push({
      check: "place_fields_disagree",
      severity: "ask",
      field: "gridReference",
      value: fields.gridReference,
      message: `names a square from which the ${other.from} lie ${metres < 1000 ? `${metres} m` : `${Math.round(metres / 1000)} km`} away, beside their uncertainty; the reference was used`,
      wayOut: "correct whichever is wrong",
    });
  return notes;
}

function otherPlace(fields: PlaceFields, rules: PlacingRules): Place | undefined {
  const other =
    fields.decimalLatitude !== "" && fields.decimalLongitude !== ""
      ? placeFromCoordinates(fields, rules)
      : fields.easting !== "" && fields.northing !== ""
        ? placeFromProjected(fields, rules)
        : undefined;
  return other === undefined || isUnplaced(other) ? undefined : other;
}

/** How far a place lies outside the square of another, in metres, beside its own reach; 0 or less where they may be one. */
function metresOutside(place: Place, other: Place): number {
  if (place.shape.kind !== "square") return 0;
  const { easting, northing, size } = place.shape.square;
  const point = projectOn(place.territory.grid, other.longitude, other.latitude);
  if (point === undefined) return 0;
  const beyond = (at: number, from: number) => Math.max(from - at, at - (from + size), 0);
  const reach = other.shape.kind === "circle" ? other.shape.radius : other.shape.square.size * Math.SQRT2;
  return Math.hypot(beyond(point.easting, easting), beyond(point.northing, northing)) - reach - other.blur;
}
