import type { SquareSize } from "../../../src/grids/grid.ts";
import { isoDate, partsOf } from "../calendar.ts";
import { casteCells } from "../castes-as-written.ts";
import { type Outing, spreadOverYears } from "../effort.ts";
import { writtenName } from "../names-as-written.ts";
import { type Spot, writtenReference } from "../places-as-written.ts";
import { type Random, saltOf } from "../random.ts";
import { remark, typedKey } from "../remarks.ts";
import { meet, type Sighting } from "../sightings.ts";
import { fillYears, numbered, PLAIN_FORM, type Row, type Source } from "../source.ts";
import { SPECIES } from "../species.ts";
import type { Surroundings } from "../surroundings.ts";
import { writtenFlower, writtenHabitat } from "../surroundings-as-written.ts";

/** Lists of several species from one place and day, with references of mixed precision. */
export const walks: Source = {
  id: "walks",
  file: "walks.csv",
  idColumn: "occurrenceID",
  columns: [
    "occurrenceID",
    "scientificName",
    "eventDate",
    "gridReference",
    "recordedBy",
    "caste",
    "individualCount",
    "locality",
    "habitat",
    "flowerVisited",
    "occurrenceRemarks",
    "isTaxonomicScopeFullyReported",
  ],
  form: PLAIN_FORM,
  share: 0.65,
  errorShare: 0.009,
  rows: (world, count, random) => {
    const rows = fillYears(spreadOverYears(count, 1990, 2024, 2.7), (year) => {
      const outing = world.effort.walk(year, random);
      const met = meet(world, outing.tetrad, outing.day, outing.hours, random);
      const written = met.filter((one) => isWritten(one, random));
      const place = world.places[outing.tetrad.index] as Surroundings;
      const complete = written.length === met.length && declaresLists(outing) ? "true" : "";
      const common = { habitat: writtenHabitat(place, keyOf(outing)), isTaxonomicScopeFullyReported: complete };
      return rowsOfWalk(outing, written, common, random);
    });
    rows.forEach((row, i) => {
      row.cells["occurrenceID"] = numbered("walk", i);
    });
    return rows;
  },
};

/** Commons are left off a list now and then. */
function isWritten({ species }: Sighting, random: Random): boolean {
  return random.chance((SPECIES[species]?.common ?? 0) > 3 ? 0.86 : 0.95);
}

/** Three recorders in five say so when they left nothing off; the others never say. */
function declaresLists({ recorder }: Outing): boolean {
  return saltOf(`${recorder.key} declares`) % 5 < 3;
}

function keyOf({ recorder, tetrad, day }: Outing): number {
  return saltOf(`${recorder.key} ${tetrad.index} ${day}`);
}

function rowsOfWalk(outing: Outing, met: readonly Sighting[], common: Record<string, string>, random: Random): Row[] {
  const { recorder, site, day, tetrad } = outing;
  const size = precision(recorder.exact, partsOf(day).year, random);
  const middle = met[0];
  const shared: Spot | undefined = size > 100 || random.chance(0.3) ? middle : undefined;
  const label: Spot | undefined = site && { tetrad: site.tetrad, easting: site.easting, northing: site.northing };
  const key = typedKey(recorder.key, random);
  const date = writtenDate(day, size, random);
  const locality = site ? `${site.name} (invented)` : random.chance(0.4) ? `near ${recorder.town.name} (invented)` : "";
  return met.flatMap((sighting) => {
    const name = writtenName(sighting, partsOf(day).year < 1998 ? 0.06 : 0.004, random);
    const gridReference = writtenReference(label ?? shared ?? { ...sighting, tetrad }, label ? 100 : size, random);
    return casteCells(sighting.counts, recorder.writesCaste, random).map(
      ({ counts, caste, count }): Row => ({
        sighting: { ...sighting, counts },
        cells: {
          occurrenceID: "",
          scientificName: name,
          eventDate: date,
          gridReference,
          recordedBy: key,
          caste,
          individualCount: count,
          locality,
          ...common,
          flowerVisited: writtenFlower(sighting.species, day, keyOf(outing), 0.25),
          occurrenceRemarks: remark(random),
        },
      }),
    );
  });
}

/** Side of the square that a walk's references name: finer for exact recorders and in later years. */
function precision(exact: number, year: number, random: Random): SquareSize {
  const drawn = random.next() * 0.6 + (1 - exact) * 0.4;
  const [fine, kilometre, tetrad] = year < 2006 ? [0.3, 0.66, 0.78] : [0.52, 0.82, 0.95];
  return drawn < (fine as number)
    ? 100
    : drawn < (kilometre as number)
      ? 1000
      : drawn < (tetrad as number)
        ? 2000
        : 10_000;
}

function writtenDate(day: number, size: SquareSize, random: Random): string {
  const date = isoDate(day);
  const way = random.next();
  if (size === 10_000 && way < 0.12) {
    return way < 0.04 ? date.slice(0, 4) : date.slice(0, 7);
  }
  return way > 0.993 ? `${date}/${isoDate(day + random.whole(1, 20))}` : date;
}
