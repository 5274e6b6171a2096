import { isoDate } from "../calendar.ts";
import { spreadOverYears } from "../effort.ts";
import { epithetOf, writtenName } from "../names-as-written.ts";
import { longitudeLatitude } from "../places-as-written.ts";
import type { Random } from "../random.ts";
import { drawFrom, runningTotals, saltOf } from "../random.ts";
import type { Recorder } from "../recorders.ts";
import { remark, typedKey } from "../remarks.ts";
import { mainCaste, meet, type Sighting } from "../sightings.ts";
import { fillYears, numbered, PLAIN_FORM, type Row, type Source } from "../source.ts";
import { writtenFlower } from "../surroundings-as-written.ts";

/** How readily each species is photographed, where not 1: easy and pretty ones more. */
const LIKED: Readonly<Record<string, number>> = { terrestris: 0.5, "lucorum-agg": 0.5, hypnorum: 2.2, lapidarius: 1.4 };

/** One photograph, one species, one point with its uncertainty. */
export const photographs: Source = {
  id: "photographs",
  file: "photographs.csv",
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
    "sex",
    "caste",
    "associatedTaxa",
    "occurrenceRemarks",
  ],
  form: PLAIN_FORM,
  share: 0.08,
  errorShare: 0.01,
  rows: (world, count, random) => {
    const rows = fillYears(spreadOverYears(count, 2004, 2024, 14), (year) => {
      const { recorder, tetrad, day } = world.effort.walk(year, random);
      const met = meet(world, tetrad, day, 0.7, random);
      if (met.length === 0) {
        return [];
      }
      const liked = runningTotals(met.map(({ species }) => LIKED[epithetOf(species)] ?? 1));
      return [photograph(met[drawFrom(liked, random)] as Sighting, recorder, random)];
    });
    rows.forEach((row, i) => {
      row.cells["occurrenceID"] = numbered("photograph", i);
    });
    return rows;
  },
};

function photograph(met: Sighting, recorder: Recorder, random: Random): Row {
  const caste = mainCaste(met.counts);
  const sighting = { ...met, counts: { [caste]: 1 } };
  const [longitude, latitude] = longitudeLatitude(met);
  const uncertainty = random.pick(["4", "5", "8", "10", "15", "25", "50", "100", "250", "1000", "", ""]);
  const flower = writtenFlower(met.species, met.day, saltOf(`${recorder.key} ${met.tetrad.index} ${met.day}`), 0.4);
  const isStated = random.chance(0.3);
  const time = random.chance(0.3)
    ? `T${String(random.whole(8, 19)).padStart(2, "0")}:${String(random.whole(10, 59))}`
    : "";
  return {
    sighting,
    cells: {
      occurrenceID: "",
      scientificName: writtenName(sighting, 0, random),
      eventDate: isoDate(met.day) + time,
      decimalLatitude: latitude.toFixed(5),
      decimalLongitude: longitude.toFixed(5),
      coordinateUncertaintyInMeters: uncertainty,
      geodeticDatum: random.chance(0.94) ? "WGS84" : "EPSG:4326",
      recordedBy: typedKey(recorder.key, random),
      sex: isStated ? (caste === "male" ? "male" : "female") : "",
      associatedTaxa: flower === "" ? "" : `visits flower of: ${flower}`,
      caste: isStated && caste !== "male" && caste !== "female" ? caste : "",
      occurrenceRemarks: remark(random),
    },
  };
}
