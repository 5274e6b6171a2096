import { dayOf, isoDate } from "../calendar.ts";
import { spreadOverYears } from "../effort.ts";
import { epithetOf, writtenName } from "../names-as-written.ts";
import { longitudeLatitude } from "../places-as-written.ts";
import { meet, total } from "../sightings.ts";
import { fillYears, numbered, PLAIN_FORM, type Source } from "../source.ts";

/** The common and showy species that a beginners' event asks for. */
const ASKED: ReadonlySet<string> = new Set([
  "terrestris",
  "lucorum-agg",
  "hortorum",
  "pratorum",
  "hypnorum",
  "lapidarius",
  "pascuorum",
]);

/** One week each July since 2012: crowds of beginners count common bees near home; coarse coordinates. */
export const countWeek: Source = {
  id: "count-week",
  file: "count-week.csv",
  idColumn: "occurrenceID",
  columns: [
    "occurrenceID",
    "scientificName",
    "eventDate",
    "decimalLatitude",
    "decimalLongitude",
    "geodeticDatum",
    "recordedBy",
    "individualCount",
    "occurrenceRemarks",
  ],
  form: PLAIN_FORM,
  share: 0.05,
  errorShare: 0.025,
  rows: (world, count, random) => {
    const rows = fillYears(spreadOverYears(count, 2012, 2024, 2), (year) => {
      const recorder = world.effort.recorder(year, random);
      const tetrad = world.effort.near(recorder, 3000, random);
      const day = dayOf(year, 7, 8) + random.whole(0, 6);
      const group = `invented-class-${String(random.whole(1, 380)).padStart(3, "0")}`;
      const digits = random.pick([2, 3, 3, 4, 4]);
      const met = meet(world, tetrad, day, 0.5, random).filter(({ species }) => ASKED.has(epithetOf(species)));
      const first = met[0];
      if (!first) {
        return [];
      }
      const [longitude, latitude] = longitudeLatitude(first);
      return met.map((one) => ({
        sighting: { ...one, easting: first.easting, northing: first.northing },
        cells: {
          occurrenceID: "",
          scientificName: writtenName(one, 0, random),
          eventDate: isoDate(day),
          decimalLatitude: latitude.toFixed(digits),
          decimalLongitude: longitude.toFixed(digits),
          geodeticDatum: "WGS84",
          recordedBy: group,
          individualCount: String(total(one.counts)),
          occurrenceRemarks: random.chance(0.03) ? "school field, ten minutes" : "",
        } as Record<string, string>,
      }));
    });
    rows.forEach((row, i) => {
      row.cells["occurrenceID"] = numbered("count", i);
    });
    return rows;
  },
};
