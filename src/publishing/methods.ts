import { coordinateSystem } from "../geodesy/coordinate-systems.ts";
import { gridNamed } from "../grids/index.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { sensitiveStatements } from "./generalisations.ts";
import { escapeHtml } from "./markdown.ts";
import { changeStatements } from "./methods/change-methods.ts";
import { coverageSentences, type VisitCounts } from "./methods/coverage-methods.ts";
import { rangeSentences } from "./methods/range-methods.ts";
import { regionSentences } from "./methods/region-methods.ts";
import { seasonSentences } from "./methods/season-methods.ts";
import { number, percent, type Statement, section } from "./methods/statement.ts";
import { useSentences } from "./methods/use-of-surroundings.ts";
import { periodLabel } from "./period-label.ts";
import type { TaxonNames } from "./taxon-names.ts";

/** Counts the methods page states beside the settings. */
export interface MethodCounts extends VisitCounts {
  used: number;
  without_hectad: number;
  without_tetrad: number;
  records_at_half: number;
  tetrads_at_half: number;
  in_disguise: number;
  near_line: number;
  vague_dates: number;
  other_interval_end: number;
  aggregates: number;
}

/** The methods page's sentences, made from the settings in force and from what was counted under them. */
export function methodStatements(
  scheme: Scheme,
  counts: MethodCounts,
  names: ReadonlyMap<string, TaxonNames>,
): Statement[] {
  const { settings } = scheme;
  return [
    ...section("Grids", ...gridSentences(scheme)),
    ...section(
      "Placing records",
      `A grid reference names a square. It counts for the 10 km or 2 km square it lies in, and never for a finer one: a 10 km reference fills no 2 km square, and a 5 km quarter fills its 10 km square only. References are cut off, never rounded.`,
      `A point is a circle of its uncertainty. It counts for the square of its centre when at least ${percent(settings.placing.minimum_overlap)} of the circle lies there. Set to 50 %, ${number(counts.records_at_half)} more records would fill a 2 km square, and ${number(counts.tetrads_at_half)} more 2 km squares would be occupied by something; more of them would be wrong.`,
      `The radius is the largest of what the record states, what its source sets, and what the digits as written can carry. Where nothing is known it is ${number(settings.placing.default_uncertainty_m)} m.`,
      counts.in_disguise > 0
        ? `${number(counts.in_disguise)} used records had coordinates that stand on the centre or corner of a square, and were read as that square.`
        : "",
      counts.near_line > 0
        ? `${number(counts.near_line)} used records lie within 5 m of a 2 km line, nearer than some transforms are exact, and could fall on its other side.`
        : "",
      `Of ${number(counts.used)} used records, ${number(counts.without_hectad)} fill no 10 km square and ${number(counts.without_tetrad)} no 2 km square; the page of each species says why.`,
    ),
    ...section(
      "Dates and periods",
      `${settings.periods.length === 1 ? "One period is" : `${inWords(settings.periods.length)} periods are`} mapped: ${settings.periods.map((period) => periodLabel(period)).join(", ")}. A record counts in a period only if its whole date lies inside; ${number(counts.vague_dates)} used records lie in none and count as recorded at some time.`,
      `The end of a written interval is read as ${settings.dates.interval_end === "inclusive" ? "included" : "not included"}. Under the other reading ${number(counts.other_interval_end)} records would count in another period or third of a month, or as a single day.`,
      settings.provisional_years.length > 0
        ? `Records still arrive for ${settings.provisional_years.join(", ")}: ${settings.provisional_years.length === 1 ? "that year is" : "those years are"} provisional.`
        : "",
    ),
    ...section(
      "Names",
      "Names are matched to the checklist through its synonyms. A qualified name (cf., aff.) never counts as the species, and a name that is not matched is left out and listed for the scheme, never guessed.",
      counts.aggregates > 0
        ? `${counts.aggregates === 1 ? "One entry is a group" : `${inWords(counts.aggregates)} entries are groups`} of species that cannot always be told apart. A record of a member counts for every group above it; a record of the group counts for no member.`
        : "",
    ),
    ...section("Records shown coarser", ...sensitiveStatements(scheme, names)),
    ...section("Coverage", ...coverageSentences(scheme, counts)),
    ...changeStatements(scheme),
    ...section(
      "Flight periods",
      "Bars count records in thirds of the month: days 1–10, 11–20, and 21 to the end, which holds 8 to 11 days. A record enters only if its whole date lies in one third; a record known only to its month enters none.",
      "Castes are those the record states. Records that state none are a class of their own and are never shared out among the others.",
      `The step behind the bars is the number of visits to all ${escapeHtml(settings.group.many)}, on the same scale. A third of the month with fewer than ${number(settings.season.minimum_visits)} visits is drawn as an open bar.`,
    ),
    ...(settings.surroundings.kinds.length === 0 ? [] : section("Habitats and flowers", ...useSentences(scheme))),
    ...section("Range", ...rangeSentences(scheme)),
    ...section("Season", ...seasonSentences(scheme)),
    ...section("Regions", ...regionSentences(scheme)),
    ...section(
      "Not a Red List assessment",
      "Counts of squares and changes between periods describe this atlas’s records. They are no assessment of a species’ risk of extinction, which needs more than squares and is made by those responsible for it in each country.",
    ),
  ];
}

function gridSentences({ settings, territories }: Scheme): string[] {
  return territories.map(({ id, name, grid, datum, gridShift }) => {
    const system = gridNamed(grid, { channelIslandsDatum: datum });
    const crs = {
      british: "EPSG:27700",
      irish: "EPSG:29903",
      "channel-islands": datum === "ED50" ? "EPSG:23030" : "EPSG:32630",
      laea: "EPSG:3035",
      mgrs: "",
    }[grid];
    const metres = gridShift?.accuracy ?? (crs === "" ? 0 : coordinateSystem(crs).accuracy);
    const by = gridShift === null ? "" : ` by the grid-shift file ${escapeHtml(gridShift.name)}`;
    const accuracy = crs === "" ? "" : ` (${crs}; coordinates are brought to it${by} to about ${metres} m)`;
    const assumed =
      grid === "channel-islands"
        ? ` References are taken to be on ${datum}: that is a setting, for the references do not say.`
        : "";
    return `${escapeHtml(settings.territories.find((territory) => territory.id === id)?.name ?? name)}: squares of the ${escapeHtml(system.name)}${accuracy}.${assumed}`;
  });
}

/** A count at the beginning of a sentence: in words up to nine. */
function inWords(count: number): string {
  return ["No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine"][count] ?? number(count);
}
