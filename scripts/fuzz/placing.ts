import { fileURLToPath } from "node:url";
import type { PlaceFields, PlacingRules } from "../../src/records/place.ts";
import { placingTerritories } from "../../src/records/record-stage.ts";
import { readScheme } from "../../src/scheme/scheme.ts";

/** The demonstration's three territories, as the program reads them. */
const TERRITORIES = placingTerritories(readScheme(fileURLToPath(new URL("../../content", import.meta.url))));

/** A record's place with nothing stated. */
export const NOWHERE: PlaceFields = {
  gridReference: "",
  decimalLatitude: "",
  decimalLongitude: "",
  geodeticDatum: "",
  coordinateUncertaintyInMeters: "",
  easting: "",
  northing: "",
  dataGeneralizations: "",
};

/** Rules of a source of the demonstration's territories. */
export function placingRules(more: Partial<PlacingRules>): PlacingRules {
  return {
    territories: TERRITORIES,
    minimumOverlap: 0.9,
    datum: "EPSG:4326",
    crs: undefined,
    sourceUncertainty: undefined,
    defaultUncertainty: 100,
    ...more,
  };
}
