import type { Place, PlaceFields, PlaceNote, PlacingRules } from "./place.ts";
import { mayBeThousands, statedNumber } from "./stated-number.ts";

/**
 * Radius of a point's uncertainty in metres: the largest of what the record states, what the source sets, what the
 * digits can carry and what a stated generalisation means. Where the record and source say nothing, the default of
 * the settings takes their place. Zero is no uncertainty anybody can have, and is passed over with a note.
 *
 * @param digits uncertainty in metres that the digits as written can carry
 * @param notes where something is to be said, a note is added
 */
export function radiusOf(
  fields: PlaceFields,
  rules: PlacingRules,
  digits: number,
  notes: PlaceNote[],
): { radius: number; from: Place["radiusFrom"] } {
  const stated = statedRadius(fields.coordinateUncertaintyInMeters, notes);
  const generalised = generalisedRadius(fields.dataGeneralizations);
  const candidates: [number, Place["radiusFrom"]][] = [[digits, "digits"]];
  if (generalised !== undefined) candidates.push([generalised, "generalisation"]);
  if (stated !== undefined) candidates.push([stated, "stated"]);
  if (rules.sourceUncertainty !== undefined) candidates.push([rules.sourceUncertainty, "source"]);
  if (stated === undefined && rules.sourceUncertainty === undefined)
    candidates.push([rules.defaultUncertainty, "default"]);
  const [radius, from] = candidates.reduce((largest, other) => (other[0] >= largest[0] ? other : largest));
  return { radius, from };
}

/**
 * The uncertainty a record states, in metres; undefined where it states none or none that can be.
 *
 * @param text of coordinateUncertaintyInMeters
 * @param notes where something is to be said, a note is added
 * @example statedRadius("250", []) // => 250
 */
export function statedRadius(text: string, notes: PlaceNote[]): number | undefined {
  if (text.trim() === "") return undefined;
  const grouped = mayBeThousands(text);
  const metres = grouped ? Number(text.trim().replaceAll(/[+,]/g, "")) : statedNumber(text);
  if (grouped)
    notes.push({
      check: "uncertainty_with_comma",
      severity: "note",
      field: "coordinateUncertaintyInMeters",
      value: text,
      message: "has a comma that may part thousands or decimals; the larger number was used",
      wayOut: "write metres without a mark for thousands",
    });
  if (metres !== undefined && metres >= 1 && metres <= 20_037_509) return metres;
  notes.push({
    check: "uncertainty_out_of_range",
    severity: "note",
    field: "coordinateUncertaintyInMeters",
    value: text,
    message:
      metres === 0
        ? "is zero, which no place has; it was taken as not stated"
        : "is not a number of metres from 1 on; it was taken as not stated",
    wayOut: "leave it empty where it is not known",
  });
  return undefined;
}

const METRES: Record<string, number> = { m: 1, km: 1000, degree: 111_000, degrees: 111_000, "°": 111_000 };

/** A number with its unit; thousands may be parted by a comma or a space. */
const CELL_SIZE =
  /(?<![\d.,])(?:(\d{1,3}(?:[ ,\u00A0]\d{3})+)|(\d{1,9}(?:[.,]\d{1,9})?))\s?-?(km|m|metres?|meters?|degrees?|°)(?![a-z])/gi;

/**
 * Half the diagonal in metres of the cell a text on generalisation names ("10 km grid", "0.1 degree"), of the largest
 * where it names several; undefined where it names none.
 *
 * @example generalisedRadius("1,000 m") // => 707.1 to a decimetre
 */
export function generalisedRadius(text: string): number | undefined {
  const sizes = [...text.matchAll(CELL_SIZE)].map(([, grouped, plain, unit]) => {
    const size = grouped === undefined ? (plain ?? "").replace(",", ".") : grouped.replaceAll(/\D/g, "");
    return Number(size) * (METRES[(unit ?? "").toLowerCase()] ?? 1);
  });
  const largest = Math.max(0, ...sizes);
  return largest > 0 ? largest / Math.SQRT2 : undefined;
}
