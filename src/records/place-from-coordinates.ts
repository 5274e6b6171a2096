import { coordinateSystem } from "../geodesy/coordinate-systems.ts";
import { decimalsAsWritten, precisionUncertainty } from "../geodesy/degree-precision.ts";
import { resolveCrs } from "../geodesy/resolve-crs.ts";
import { transform } from "../geodesy/transform.ts";
import { projectOn } from "./on-grid.ts";
import {
  type Place,
  type PlaceFields,
  type PlaceNote,
  type PlacingRules,
  proposing,
  type Unplaced,
  unplaced,
} from "./place.ts";
import { radiusOf } from "./radius.ts";
import { statedNumber } from "./stated-number.ts";

const WGS84 = "EPSG:4326";
/** Further decimals of a degree are smaller than an atom. */
const MOST_DECIMALS = 15;

/**
 * Places a record by latitude and longitude: a circle on the grid of the territory it lies in. Coordinates that
 * would fit if exchanged or with the other sign are proposed, never used.
 */
export function placeFromCoordinates(fields: PlaceFields, rules: PlacingRules): Place | Unplaced {
  const both = `${fields.decimalLatitude}, ${fields.decimalLongitude}`;
  const latitude = statedNumber(fields.decimalLatitude);
  const longitude = statedNumber(fields.decimalLongitude);
  if (latitude === undefined) return notNumber("decimalLatitude", fields.decimalLatitude);
  if (longitude === undefined) return notNumber("decimalLongitude", fields.decimalLongitude);
  if (latitude === 0 && longitude === 0)
    return unplaced(
      "coordinates_zero",
      "decimalLatitude",
      both,
      "both coordinates are 0",
      "give the real place, or leave both empty",
    );
  const datum = datumOf(fields, rules);
  if (isRefused(datum)) return datum;
  const wgs84 = toWgs84(datum, longitude, latitude);
  const territory = wgs84 && rules.territories.find((candidate) => candidate.holds(wgs84[0], wgs84[1]));
  const point = wgs84 && territory && projectOn(territory.grid, wgs84[0], wgs84[1]);
  if (wgs84 === undefined || territory === undefined || point === undefined)
    return outside(fields, rules, both, longitude, latitude);
  const notes: PlaceNote[] = [];
  // Many programs drop trailing zeros, so the longer of the two texts tells what both carry.
  const decimals = Math.min(
    MOST_DECIMALS,
    Math.max(decimalsAsWritten(fields.decimalLatitude) ?? 0, decimalsAsWritten(fields.decimalLongitude) ?? 0),
  );
  const precision = precisionUncertainty(latitude, 10 ** -decimals);
  const { radius, from } = radiusOf(fields, rules, precision, notes);
  const blur = Math.max(10, precision / (2 * Math.SQRT2) + coordinateSystem(point.crs).accuracy);
  return {
    territory,
    shape: { kind: "circle", point, radius },
    longitude: wgs84[0],
    latitude: wgs84[1],
    from: "coordinates",
    radiusFrom: from,
    blur,
    notes,
  };
}

function datumOf(fields: PlaceFields, rules: PlacingRules): string | Unplaced {
  const stated = fields.geodeticDatum.trim();
  // “not recorded” is Darwin Core's word for none; before 2021 it was “unknown”.
  const isUnstated = /^(?:not recorded|unknown)?$/i.test(stated);
  const code = resolveCrs(stated) ?? (isUnstated ? rules.datum : undefined);
  if (code !== undefined && coordinateSystem(code).kind === "geographic") return code;
  return isUnstated
    ? unplaced(
        "datum_not_stated",
        "geodeticDatum",
        stated,
        "no datum is stated for the coordinates",
        "set datum for the source, for example EPSG:4326",
      )
    : unplaced(
        "datum_unknown",
        "geodeticDatum",
        stated,
        code === undefined ? "is no datum that is known here" : "is a system of metres, not a datum of degrees",
        "write a code such as EPSG:4326",
      );
}

function isRefused(answer: string | Unplaced): answer is Unplaced {
  return typeof answer !== "string";
}

function toWgs84(datum: string, longitude: number, latitude: number): [number, number] | undefined {
  if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) return undefined;
  return datum === WGS84 ? [longitude, latitude] : transform(datum, WGS84, longitude, latitude);
}

function notNumber(field: "decimalLatitude" | "decimalLongitude", value: string): Unplaced {
  return value.trim() === ""
    ? unplaced("coordinate_missing", field, value, "one coordinate is empty", "give both latitude and longitude")
    : unplaced(
        "coordinate_not_a_number",
        field,
        value,
        "is not a number of degrees",
        "write decimal degrees, such as 51.4778",
      );
}

/** A number as written, with the other sign. */
function otherSign(text: string): string {
  const plain = text.trim().replace("−", "-").replace(/^\+/, "");
  return plain.startsWith("-") ? plain.slice(1) : `-${plain}`;
}

/** What might be meant by coordinates in no territory: exchanged, or a sign lost. */
function outside(
  fields: PlaceFields,
  rules: PlacingRules,
  both: string,
  longitude: number,
  latitude: number,
): Unplaced {
  const fits = (x: number, y: number) =>
    Math.abs(y) <= 90 && Math.abs(x) <= 180 && rules.territories.some((territory) => territory.holds(x, y));
  if (fits(latitude, longitude))
    return proposing(
      unplaced(
        "coordinates_exchanged",
        "decimalLatitude",
        both,
        "lie in no territory, but would if latitude and longitude were exchanged",
        "exchange them if that is so",
      ),
      `decimalLatitude=${fields.decimalLongitude}; decimalLongitude=${fields.decimalLatitude}`,
    );
  if (fits(-longitude, latitude))
    return proposing(
      unplaced(
        "longitude_sign",
        "decimalLongitude",
        fields.decimalLongitude,
        "lies in no territory, but would with the other sign",
        "change the sign if that is so",
      ),
      `decimalLatitude=${fields.decimalLatitude}; decimalLongitude=${otherSign(fields.decimalLongitude)}`,
    );
  if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180)
    return unplaced(
      "coordinate_out_of_range",
      "decimalLatitude",
      both,
      "are not on the globe",
      "latitude runs from −90 to 90, longitude from −180 to 180",
    );
  return unplaced(
    "outside_territories",
    "decimalLatitude",
    both,
    "lie in no territory of the atlas",
    "check them, or widen the territory",
  );
}
