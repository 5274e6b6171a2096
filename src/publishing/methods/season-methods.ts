import type { Scheme } from "../../scheme/scheme.ts";
import { type Told, told } from "./statement.ts";

/** What the methods page says of seasons and how they move. */
export function seasonStatements({ settings: { season, castes } }: Scheme): Told[] {
  return [
    told("season-dates", { castes: castes.length === 0 ? "no" : "yes", records: season.minimum_records }),
    told("season-visits", { visits: season.minimum_visits }),
    told("season-interval"),
    told("season-shift", { visits: season.minimum_records_a_year, years: season.minimum_years }),
    told("season-silence"),
  ];
}
