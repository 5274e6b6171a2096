/** Why a record is not used or held, and why a used one supports no square: codes of the accounting, in words. */
export const REASONS: Readonly<Record<string, string>> = Object.freeze({
  used: "as published",
  not_detected: "looked for and not found: makes a visit, never a square",
  unreadable_row: "row cannot be read",
  repeated_id: "an earlier row has the same id",
  two_routes: "the same record by another route",
  impossible_caste: "a caste this taxon does not have",
  name_empty: "no name",
  name_unknown: "name is not in the checklist",
  name_qualified: "name is qualified (cf., aff.)",
  name_ambiguous: "name fits several taxa",
  date_empty: "no date",
  date_unreadable: "date cannot be read",
  date_in_future: "date is after the edition",
  place_empty: "no place",
  grid_reference_unreadable: "grid reference cannot be read",
  grid_reference_outside_territory: "grid reference outside its grid's territory",
  coordinate_missing: "one coordinate is missing",
  coordinate_not_a_number: "a coordinate is not a number",
  coordinate_out_of_range: "coordinates are not on the globe",
  coordinates_zero: "both coordinates are 0",
  coordinates_exchanged: "latitude and longitude look exchanged",
  longitude_sign: "longitude looks to have lost its sign",
  outside_territories: "outside the atlas's territories",
  datum_not_stated: "no datum is stated",
  datum_unknown: "datum is not known",
  crs_not_stated: "no coordinate system is stated",
  easting_northing_unreadable: "easting and northing cannot be read",
  projection_offset: "easting and northing of another coordinate system",
  generalised_without_size: "coarsened to a cell of unknown size",
  excluded: "fossil, captive, cultivated or released",
  contradictory_castes: "two castes that exclude each other",
  decision_record_changed: "says something else than when it was ruled on",
  held_by_ruling: "held by a ruling",
  left_out: "left out by a ruling",
  identification_undecided: "identification cannot be decided",
  status_unreadable: "occurrence status cannot be read",
});

/** A reason in words; the code itself where it has none. */
export function reasonInWords(code: string): string {
  return REASONS[code] ?? code.replaceAll("_", " ");
}
