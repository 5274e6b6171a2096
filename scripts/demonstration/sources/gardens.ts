import { isoDate } from "../calendar.ts";
import { casteCells } from "../castes-as-written.ts";
import { randomDay, spreadOverYears } from "../effort.ts";
import { TETRAD } from "../land.ts";
import { writtenName } from "../names-as-written.ts";
import { referenceOf } from "../places-as-written.ts";
import { typedKey } from "../remarks.ts";
import { meet } from "../sightings.ts";
import { fillYears, numbered, PLAIN_FORM, type Source } from "../source.ts";

/** What people see at home, to 1 km and the day; in mild winters too. */
export const gardens: Source = {
  id: "gardens",
  file: "gardens.csv",
  idColumn: "occurrenceID",
  columns: ["occurrenceID", "scientificName", "eventDate", "gridReference", "recordedBy", "caste", "individualCount"],
  form: PLAIN_FORM,
  share: 0.06,
  errorShare: 0.008,
  rows: (world, count, random) => {
    const rows = fillYears(spreadOverYears(count, 1995, 2024, 4), (year) => {
      const recorder = world.effort.recorder(year, random);
      const { easting, northing } = recorder.garden;
      const { territory } = recorder.town.tetrad;
      const tetrad = world.land.tetradAt(territory, easting, northing) ?? recorder.town.tetrad;
      const day = randomDay(year, random);
      const at = { tetrad, easting: within(easting, tetrad.easting), northing: within(northing, tetrad.northing) };
      const key = typedKey(recorder.key, random);
      return meet(world, tetrad, day, 0.6, random).flatMap((met) => {
        const name = writtenName(met, 0, random);
        return casteCells(met.counts, recorder.writesCaste, random).map(({ counts, caste, count: number }) => ({
          sighting: { ...met, ...at, counts },
          cells: {
            occurrenceID: "",
            scientificName: name,
            eventDate: isoDate(day),
            gridReference: referenceOf(at, 1000),
            recordedBy: key,
            caste,
            individualCount: number,
          } as Record<string, string>,
        }));
      });
    });
    rows.forEach((row, i) => {
      row.cells["occurrenceID"] = numbered("garden", i);
    });
    return rows;
  },
};

function within(value: number, corner: number): number {
  return Math.max(corner, Math.min(corner + TETRAD - 1, value));
}
