import { besideReference } from "./beside-reference.ts";
import { isUnplaced, type Place, type PlaceFields, type PlacingRules, type Unplaced, unplaced } from "./place.ts";
import { placeFromCoordinates } from "./place-from-coordinates.ts";
import { placeFromProjected } from "./place-from-projected.ts";
import { placeFromReference } from "./place-from-reference.ts";
import { generalisedRadius } from "./radius.ts";

/**
 * Reads one place in whichever way its fields allow: grid reference first, coordinates, easting and northing.
 * A reference that cannot be read gives way to coordinates, with a note.
 */
export function readPlace(fields: PlaceFields, rules: PlacingRules): Place | Unplaced {
  const notes = [];
  if (fields.gridReference !== "") {
    const place = placeFromReference(fields.gridReference, rules);
    if (!isUnplaced(place)) return withNotes(place, besideReference(place, fields, rules));
    notes.push(place.refused);
    if (fields.decimalLatitude === "" && fields.easting === "") return { refused: place.refused, notes: [] };
  }
  if (fields.dataGeneralizations !== "" && generalisedRadius(fields.dataGeneralizations) === undefined)
    return held(
      unplaced(
        "generalised_without_size",
        "dataGeneralizations",
        fields.dataGeneralizations,
        "the place was coarsened, and the text names no size",
        "give the size of the cell, such as 10 km",
      ),
    );
  if (fields.decimalLatitude !== "" || fields.decimalLongitude !== "")
    return withNotes(placeFromCoordinates(fields, rules), notes);
  if (fields.easting !== "" || fields.northing !== "") return withNotes(placeFromProjected(fields, rules), notes);
  return unplaced("place_empty", "gridReference", "", "no place is given", "give a grid reference or coordinates");
}

/** A coarsened place may lie anywhere near its point, so the record waits for a person. */
function held(answer: Unplaced): Unplaced {
  return { ...answer, refused: { ...answer.refused, severity: "blocks" } };
}

function withNotes(answer: Place | Unplaced, notes: Place["notes"]): Place | Unplaced {
  return notes.length === 0 ? answer : { ...answer, notes: [...notes, ...answer.notes] };
}
