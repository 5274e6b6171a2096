import { isoDate, partsOf } from "../calendar.ts";
import { randomDay } from "../effort.ts";
import type { Tetrad } from "../land.ts";
import { epithetOf, writtenName } from "../names-as-written.ts";
import { townName } from "../place-names.ts";
import { drawFrom, type Random, runningTotals } from "../random.ts";
import { mainCaste, meet, type Sighting } from "../sightings.ts";
import { fillYears, numbered, PLAIN_FORM, type Source } from "../source.ts";

/** How eagerly collectors kept each species, where not 1: rarities, and few of the common. */
const KEPT: Readonly<Record<string, number>> = {
  terrestris: 0.4,
  "lucorum-agg": 0.4,
  hortorum: 0.5,
  pratorum: 0.6,
  lapidarius: 0.5,
  pascuorum: 0.4,
  ruderatus: 4,
  ruderarius: 3,
  muscorum: 3,
  humilis: 3,
  sylvarum: 5,
  distinguendus: 6,
};

/** Pinned specimens, 1890 to 2003, placed by easting and northing with zeros at the end; old names; lots. */
export const museum: Source = {
  id: "museum",
  file: "museum.csv",
  idColumn: "occurrenceID",
  columns: [
    "occurrenceID",
    "basisOfRecord",
    "scientificName",
    "eventDate",
    "easting",
    "northing",
    "verbatimSRS",
    "recordedBy",
    "sex",
    "caste",
    "individualCount",
    "locality",
    "occurrenceRemarks",
  ],
  form: PLAIN_FORM,
  share: 0.045,
  errorShare: 0.012,
  rows: (world, count, random) => {
    const british = world.land.tetrads.filter(({ territory }) => territory === "britain");
    const liked = runningTotals(british.map(({ index }) => 0.15 + (world.places[index]?.flowers ?? 0) ** 3));
    const used = new Set<string>();
    const rows = fillYears(collectingYears(count), (year) => {
      const tetrad = british[drawFrom(liked, random)] as Tetrad;
      const met = meet(world, tetrad, randomDay(year, random), 2, random);
      const locality = `${used.size < 300 ? townName(random, used) : random.pick([...used])} (invented)`;
      const collector = `invented-collector-${String(random.whole(1, 40)).padStart(2, "0")}`;
      return met
        .filter(({ species }) => random.chance(Math.min(1, 0.25 * (KEPT[epithetOf(species)] ?? 1))))
        .map((one) => specimenRow(one, { year, locality, collector }, random));
    });
    rows.forEach((row, i) => {
      row.cells["occurrenceID"] = numbered("specimen", i);
    });
    return rows;
  },
};

/** Collecting rises to 1930, falls in the wars, rises again to 1975 and dies away. */
function collectingYears(count: number): Map<number, number> {
  const years = Array.from({ length: 114 }, (_, i) => 1890 + i);
  const weight = (year: number): number =>
    Math.exp(-(((year - 1925) / 20) ** 2)) + 1.3 * Math.exp(-(((year - 1975) / 16) ** 2)) * (year > 1945 ? 1 : 0.2);
  const sum = years.reduce((all, year) => all + weight(year), 0);
  return new Map(years.map((year) => [year, Math.round((count * weight(year)) / sum)]));
}

function specimenRow(
  met: Sighting,
  { year, locality, collector }: { year: number; locality: string; collector: string },
  random: Random,
) {
  const caste = mainCaste(met.counts);
  const lot = random.chance(0.3) ? random.whole(2, 30) : 1;
  const sighting = { ...met, counts: { [caste]: lot } };
  const side = random.pick([100, 100, 100, 1000, 1000, 1000, 1000, 10_000, 10_000, 10_000]);
  const isStated = random.chance(0.8);
  return {
    sighting,
    cells: {
      occurrenceID: "",
      basisOfRecord: "PreservedSpecimen",
      scientificName: writtenName(sighting, year < 1975 ? 0.85 : 0.15, random),
      eventDate: labelDate(met.day, random),
      easting: String(Math.floor(met.easting / side) * side),
      northing: String(Math.floor(met.northing / side) * side),
      verbatimSRS: "EPSG:27700",
      recordedBy: collector,
      sex: isStated ? (caste === "male" ? "male" : "female") : "",
      caste: isStated && (caste === "queen" || caste === "worker") ? caste : "",
      individualCount: String(lot),
      locality,
      occurrenceRemarks: lot > 1 ? `lot of ${lot}` : "",
    } as Record<string, string>,
  };
}

function labelDate(day: number, random: Random): string {
  const date = isoDate(day);
  const { year } = partsOf(day);
  const decade = year - (year % 10);
  const way = random.next();
  if (way < 0.5) {
    return date;
  }
  return way < 0.78 ? date.slice(0, 7) : way < 0.93 ? String(year) : `${decade}/${decade + 9}`;
}
