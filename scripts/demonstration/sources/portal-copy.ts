import { isRefusal } from "../../../src/grids/grid.ts";
import { gridOf } from "../grids.ts";
import type { Random } from "../random.ts";
import { numbered, PLAIN_FORM, type Row, type Source } from "../source.ts";

/**
 * Rows of walks and photographs that come a second time through an invented portal: some with the id they had,
 * some with a new id and, for a reference, the middle of its square as coordinates.
 */
export const portalCopy: Source = {
  id: "portal-copy",
  file: "portal-copy.csv",
  idColumn: "occurrenceID",
  columns: [
    "occurrenceID",
    "scientificName",
    "eventDate",
    "decimalLatitude",
    "decimalLongitude",
    "coordinateUncertaintyInMeters",
    "geodeticDatum",
    "recordedBy",
    "caste",
    "individualCount",
  ],
  form: PLAIN_FORM,
  share: 0.021,
  errorShare: 0.006,
  rows: (_, count, random, before) => {
    const originals = [...(before.get("walks") ?? []), ...(before.get("photographs") ?? [])];
    const step = Math.max(1, Math.floor(originals.length / count));
    const rows: Row[] = [];
    for (let i = random.whole(0, step - 1); i < originals.length && rows.length < count; i += step) {
      const copy = copied(originals[i] as Row, rows.length, random);
      if (copy) {
        rows.push(copy);
      }
    }
    return rows;
  },
};

function copied({ cells, sighting }: Row, index: number, random: Random): Row | undefined {
  const place = cells["gridReference"] ? middleOf(cells["gridReference"], sighting.tetrad.grid) : pointOf(cells);
  if (!place) {
    return undefined;
  }
  return {
    sighting,
    cells: {
      occurrenceID: random.chance(0.45) ? (cells["occurrenceID"] as string) : numbered("portal", index),
      scientificName: (cells["scientificName"] as string).trim(),
      eventDate: cells["eventDate"] as string,
      ...place,
      geodeticDatum: "WGS84",
      recordedBy: random.chance(0.7) ? (cells["recordedBy"] as string).trim() : "",
      caste: cells["caste"] ?? "",
      individualCount: cells["individualCount"] ?? "",
    },
  };
}

function pointOf(cells: Row["cells"]): Record<string, string> {
  return {
    decimalLatitude: cells["decimalLatitude"] as string,
    decimalLongitude: cells["decimalLongitude"] as string,
    coordinateUncertaintyInMeters: cells["coordinateUncertaintyInMeters"] as string,
  };
}

/** Middle of a square, with half its diagonal as uncertainty. */
function middleOf(reference: string, gridId: Row["sighting"]["tetrad"]["grid"]): Record<string, string> | undefined {
  const grid = gridOf(gridId);
  const square = grid.parse(reference);
  if (isRefusal(square)) {
    return undefined;
  }
  const half = square.size / 2;
  const [longitude, latitude] = grid.unproject({
    ...square,
    easting: square.easting + half,
    northing: square.northing + half,
  });
  return {
    decimalLatitude: latitude.toFixed(6),
    decimalLongitude: longitude.toFixed(6),
    coordinateUncertaintyInMeters: String(Math.round(half * Math.SQRT2)),
  };
}
