import { coordinateSystem } from "../geodesy/coordinate-systems.ts";
import { gridNamed } from "../grids/index.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { sensitiveStatements } from "./generalisations.ts";
import { changeStatements } from "./methods/change-methods.ts";
import { coverageStatements, type VisitCounts } from "./methods/coverage-methods.ts";
import { expectedStatements } from "./methods/expected-methods.ts";
import { rangeStatements } from "./methods/range-methods.ts";
import { regionStatements } from "./methods/region-methods.ts";
import { seasonStatements } from "./methods/season-methods.ts";
import { percent, type Statement, section, type Told, told } from "./methods/statement.ts";
import { useStatements } from "./methods/use-of-surroundings.ts";
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

/** What the methods page says, from the settings in force and what was counted under them. */
export function methodStatements(
  scheme: Scheme,
  counts: MethodCounts,
  names: ReadonlyMap<string, TaxonNames>,
): Statement[] {
  const { settings } = scheme;
  return [
    ...section("grids", ...gridStatements(scheme)),
    ...section("placing-records", ...placingStatements(settings, counts)),
    ...section("dates-and-periods", ...dateStatements(settings, counts)),
    ...section("names", told("names"), counts.aggregates > 0 ? told("names-groups", { n: counts.aggregates }) : null),
    ...section("records-shown-coarser", ...sensitiveStatements(scheme, names)),
    ...section("coverage", ...coverageStatements(scheme, counts)),
    ...section("expected-species", ...expectedStatements(settings.coverage)),
    ...changeStatements(scheme),
    ...section(
      "flight-periods",
      told("flight-thirds"),
      told("flight-castes"),
      told("flight-step", { group: settings.group.many, visits: settings.season.minimum_visits }),
    ),
    ...section("habitats-and-flowers", ...useStatements(scheme)),
    ...section("range", ...rangeStatements(scheme)),
    ...section("season", ...seasonStatements(scheme)),
    ...section("regions", ...regionStatements(scheme)),
    ...section("not-a-red-list-assessment", told("not-a-red-list")),
  ];
}

function placingStatements({ placing }: Scheme["settings"], counts: MethodCounts): (Told | null)[] {
  return [
    told("placing-squares"),
    told("placing-points", {
      percent: percent(placing.minimum_overlap),
      records: counts.records_at_half,
      tetrads: counts.tetrads_at_half,
    }),
    told("placing-radius", { metres: placing.default_uncertainty_m }),
    counts.in_disguise > 0 ? told("placing-disguise", { n: counts.in_disguise }) : null,
    counts.near_line > 0 ? told("placing-line", { n: counts.near_line }) : null,
    told("placing-without", { used: counts.used, hectad: counts.without_hectad, tetrad: counts.without_tetrad }),
  ];
}

function dateStatements(
  { periods, dates, provisional_years }: Scheme["settings"],
  counts: MethodCounts,
): (Told | null)[] {
  return [
    told("dates-periods", {
      n: periods.length,
      periods: periods.map((period) => periodLabel(period)).join(", "),
      vague: counts.vague_dates,
    }),
    told("dates-interval", { end: dates.interval_end, records: counts.other_interval_end }),
    provisional_years.length === 0
      ? null
      : told("dates-provisional", { n: provisional_years.length, years: provisional_years.join(", ") }),
  ];
}

function gridStatements({ settings, territories }: Scheme): Told[] {
  return territories.flatMap(({ id, name, grid, datum, gridShift }) => {
    const system = gridNamed(grid, { channelIslandsDatum: datum });
    const crs = {
      british: "EPSG:27700",
      irish: "EPSG:29903",
      "channel-islands": datum === "ED50" ? "EPSG:23030" : "EPSG:32630",
      laea: "EPSG:3035",
      mgrs: "",
    }[grid];
    const territory = settings.territories.find((one) => one.id === id)?.name ?? name;
    if (crs === "") return [told("grid", { territory, grid: system.name })];
    const metres = gridShift?.accuracy ?? coordinateSystem(crs).accuracy;
    const accuracy = { territory, grid: system.name, crs, metres, shift: gridShift?.name ?? "none" };
    return [told("grid-accuracy", accuracy), ...(grid === "channel-islands" ? [told("grid-datum", { datum })] : [])];
  });
}
