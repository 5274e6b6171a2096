import { dayOf, isoDate } from "../calendar.ts";
import { spreadOverYears } from "../effort.ts";
import type { Tetrad } from "../land.ts";
import { writtenName } from "../names-as-written.ts";
import { referenceOf } from "../places-as-written.ts";
import type { Random } from "../random.ts";
import { mainCaste, meet, type Sighting, total } from "../sightings.ts";
import { fillYears, numbered, PLAIN_FORM, type Row, type Source } from "../source.ts";
import { indexOfSpecies } from "../species.ts";
import type { World } from "../world.ts";

/**
 * Surveyors look for one scarce species in the invented north-west, note where it was not found, and now and then
 * another bee: complete for the target only.
 */
export const greatYellowSurvey: Source = {
  id: "great-yellow-survey",
  file: "great-yellow-survey.csv",
  idColumn: "occurrenceID",
  columns: [
    "occurrenceID",
    "eventID",
    "scientificName",
    "occurrenceStatus",
    "eventDate",
    "gridReference",
    "recordedBy",
    "caste",
    "individualCount",
  ],
  form: PLAIN_FORM,
  share: 0.012,
  errorShare: 0.006,
  rows: (world, count, random) => {
    const target = indexOfSpecies("invented-distinguendus");
    const squares = squaresToSearch(world, target);
    let events = 0;
    const rows = fillYears(spreadOverYears(count, 2008, 2021, 1.2), (year) => {
      const tetrad = random.pick(squares);
      const day = dayOf(year, 7, 1) + random.whole(0, 60);
      events += 1;
      return surveyVisit(world, { target, tetrad, day, event: numbered("survey-visit", events - 1) }, random);
    });
    rows.forEach((row, i) => {
      row.cells["occurrenceID"] = numbered("survey", i);
    });
    return rows;
  },
};

/** Where the target has ever lived in the north-west, and squares as good that never had it. */
function squaresToSearch({ land, truth }: World, target: number): readonly Tetrad[] {
  const region = land.tetrads.filter(({ territory, x, y }) => territory === "britain" && y > 780 && x < 360);
  const ever = region.filter(({ index }) => [0, 1, 2].some((epoch) => truth.isPresent(target, index, epoch)));
  const now = ever.filter(({ index }) => truth.isPresent(target, index, 2));
  return [...ever, ...now, ...now, ...now, ...region.filter((_, i) => i % 40 === 0)];
}

function surveyVisit(
  world: World,
  { target, tetrad, day, event }: { target: number; tetrad: Tetrad; day: number; event: string },
  random: Random,
): Row[] {
  const met = meet(world, tetrad, day, 3.5, random);
  const found = met.find(({ species }) => species === target);
  const middle = met[0] ?? { easting: tetrad.easting + 1000, northing: tetrad.northing + 1000 };
  const nothing: Sighting = {
    species: target,
    counts: {},
    tetrad,
    easting: middle.easting,
    northing: middle.northing,
    day,
  };
  const surveyor = `invented-surveyor-${String(random.whole(1, 14)).padStart(2, "0")}`;
  const others = met.filter(({ species }) => species !== target && random.chance(0.12));
  return [found ?? nothing, ...others].map((sighting) => {
    const isFound = total(sighting.counts) > 0;
    return {
      sighting,
      cells: {
        occurrenceID: "",
        eventID: event,
        scientificName: sighting.species === target ? "Bombus distinguendus" : writtenName(sighting, 0, random),
        occurrenceStatus: isFound ? "present" : "absent",
        eventDate: isoDate(day),
        gridReference: referenceOf(sighting, 100),
        recordedBy: surveyor,
        caste: isFound && sighting.species === target ? mainCaste(sighting.counts) : "",
        individualCount: isFound ? String(total(sighting.counts)) : "0",
      },
    };
  });
}
