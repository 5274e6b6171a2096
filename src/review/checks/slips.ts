import type { Database } from "../../engine/database.ts";
import { PLACE_FIELDS, type Place, type PlaceFields, type PlacingRules } from "../../records/place.ts";
import { placingRules } from "../../records/record-stage.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { type PlaceReading, referenceOf } from "../place-readings.ts";

/** Where a record would be looked for. */
interface Mate {
  longitude: number;
  latitude: number;
  reach_m: number;
}

type Candidate = Mate & PlaceFields & { record_no: number; companion_no: number; source: string };

/**
 * Reads the place of each odd record otherwise and keeps the first reading that lies with its mate: table `slips`
 * (record_no, companion_no, slip, proposal).
 *
 * @param pairs name of a table of record_no, companion_no, and the mate's longitude, latitude and reach_m
 * @param readings how a place may be read otherwise
 * @param together_m metres between the two points within which they are one place, whatever their reach
 */
export async function laySlips(
  { database, scheme }: { database: Database; scheme: Scheme },
  pairs: string,
  readings: (fields: PlaceFields, rules: PlacingRules, mate: Mate) => PlaceReading[],
  together_m: number,
): Promise<void> {
  const rulesOf = placingRules(scheme);
  const found: { record_no: number; companion_no: number; slip: string; proposal: string }[] = [];
  const query = `SELECT p.record_no, p.companion_no, p.longitude, p.latitude, p.reach_m, s.source, ${PLACE_FIELDS.map((field) => `trim(s."${field}") AS "${field}"`).join(", ")}
     FROM ${pairs} AS p JOIN stated_records AS s USING (record_no) ORDER BY p.record_no, p.companion_no`;
  await database.batches(query, (columns, size) => {
    for (let index = 0; index < size; index += 1) {
      const candidate = Object.fromEntries(
        Object.entries(columns).map(([name, values]) => [name, values[index]]),
      ) as unknown as Candidate;
      const { source, record_no, companion_no } = candidate;
      const rules = rulesOf.get(source);
      const meant =
        rules && readings(candidate, rules, candidate).find(({ place }) => isTogether(place, candidate, together_m));
      if (meant !== undefined)
        found.push({ record_no, companion_no, slip: meant.slip, proposal: referenceOf(meant.place) });
    }
  });
  const filler = await database.fill("slips", {
    record_no: "integer",
    companion_no: "integer",
    slip: "text",
    proposal: "text",
  });
  filler.add({
    record_no: found.map(({ record_no }) => record_no),
    companion_no: found.map(({ companion_no }) => companion_no),
    slip: found.map(({ slip }) => slip),
    proposal: found.map(({ proposal }) => proposal),
  });
  filler.done();
}

/** A coarse place is with a finer one that it may hold; two of one size are together where they are one or touch. */
function isTogether({ longitude, latitude, shape }: Place, mate: Mate, together_m: number): boolean {
  const reach = shape.kind === "circle" ? shape.radius : shape.square.size / Math.SQRT2;
  const north = (latitude - mate.latitude) * 111_195;
  const east = (longitude - mate.longitude) * 111_195 * Math.cos((latitude * Math.PI) / 180);
  return Math.hypot(north, east) <= Math.max(together_m, Math.abs(reach - mate.reach_m));
}
