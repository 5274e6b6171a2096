import { areaAt } from "../areas.ts";
import { partsOf } from "../calendar.ts";
import { mixedCastes } from "../castes-as-written.ts";
import { type Outing, spreadOverYears } from "../effort.ts";
import { writtenName } from "../names-as-written.ts";
import { type Spot, writtenReference } from "../places-as-written.ts";
import { hashed, type Random, saltOf } from "../random.ts";
import { meet, type Sighting } from "../sightings.ts";
import { fillYears, numbered, type Row, type Source } from "../source.ts";

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];
/** Share of cards that leave the area out, and the luck that decides: apart from the rest, which falls as it would without. */
const LEFT_BLANK = 0.08;
const AREAS = saltOf("areas of the cards");
const CASTES = { queen: "q", worker: "w", male: "m", female: "f" } as const;

/** Cards of a county or area, typed in later: day-first dates, vague dates, castes in one text, semicolons, Windows-1252. */
export const countyCardIndex: Source = {
  id: "county-card-index",
  file: "county-card-index.csv",
  idColumn: "Card no",
  columns: ["Species", "Grid ref", "Date", "Recorder", "Sex/stage", "Site", "Area", "Card no"],
  form: { delimiter: ";", encoding: "windows-1252", newline: "\r\n" },
  share: 0.085,
  errorShare: 0.009,
  rows: (world, count, random) => {
    const rows = fillYears(cardYears(count), (year) => {
      const outing = world.effort.walk(year, random);
      return rowsOfCard(outing, meet(world, outing.tetrad, outing.day, outing.hours * 1.2, random), random);
    });
    rows.forEach((row, i) => {
      row.cells["Card no"] = numbered("card", i);
    });
    return rows;
  },
};

/** More each year to 1999, then fewer as other ways of recording come up. */
function cardYears(count: number): Map<number, number> {
  return new Map([...spreadOverYears(count * 0.76, 1975, 1999, 4), ...spreadOverYears(count * 0.24, 2000, 2009, 0.4)]);
}

function rowsOfCard({ site, recorder, day, tetrad }: Outing, met: readonly Sighting[], random: Random): Row[] {
  const size = random.pick([100, 1000, 1000, 1000, 2000, 10_000, 10_000] as const);
  const label: Spot | undefined = site && { tetrad: site.tetrad, easting: site.easting, northing: site.northing };
  const { year } = partsOf(day);
  const spot = label ?? met[0];
  const area = spot === undefined || hashed(tetrad.index, day, AREAS) < LEFT_BLANK ? "" : areaAt(spot);
  const date = cardDate(day, random);
  return met.map((sighting) => ({
    sighting,
    cells: {
      Species: writtenName(sighting, year < 1985 ? 0.4 : 0.08, random),
      "Grid ref": writtenReference(label ?? met[0] ?? { ...sighting, tetrad }, label ? 1000 : size, random),
      Date: date,
      Recorder: recorder.key,
      "Sex/stage": random.chance(0.5) ? cardCastes(sighting, random) : "",
      Site: site
        ? `${site.name} (invented)`
        : `${recorder.town.name} (invented) – ${random.pick(["lane", "verge", "hill", "green"])}`,
      Area: area,
      "Card no": "",
    } as Record<string, string>,
  }));
}

function cardCastes({ counts }: Sighting, random: Random): string {
  const castes = Object.keys(counts) as (keyof typeof CASTES)[];
  const only = castes.length === 1 ? castes[0] : undefined;
  return only && random.chance(0.6) ? CASTES[only] : mixedCastes(counts);
}

/** "12/7/1996", "July 1994", "1994" or "1980s". */
function cardDate(day: number, random: Random): string {
  const { year, month, date } = partsOf(day);
  const way = random.next();
  if (way < 0.84) {
    return `${date}/${month}/${year}`;
  }
  return way < 0.93 ? `${MONTHS[month - 1]} ${year}` : way < 0.98 ? String(year) : `${year - (year % 10)}s`;
}
