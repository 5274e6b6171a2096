import { type Database, sqlBeside } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { firstDayOfMonth } from "./season-calendar.ts";
import { fillSeasonFigures } from "./season-figures.ts";
import { fillSeasonShares } from "./season-shares.ts";
import { fillSeasonShifts } from "./season-shifts.ts";

/**
 * Everything of when a taxon is about: records and visits in thirds of the month (`taxon_season`, `season_shares` and
 * what is beside them), dates of its season (`season_figures`) and how it moved (`season_shifts`).
 */
export async function measureSeason(database: Database, scheme: Scheme): Promise<void> {
  const { season, surroundings } = scheme.settings;
  const nests = await database.fill("nest_kinds", { kind: "text" });
  nests.add({ kind: surroundings.kinds.filter(({ field }) => field === "nestSite").map(({ id }) => id) });
  nests.done();
  const start = await database.fill("season_start", { first_day: "integer" });
  start.add({ first_day: [firstDayOfMonth(season.year_starts)] });
  start.done();
  await database.run(sqlBeside(import.meta.url, "thirds.sql"));
  await database.run(sqlBeside(import.meta.url, "days.sql"));
  await fillSeasonShares(database, season.minimum_visits);
  await fillSeasonFigures(database, scheme);
  await fillSeasonShifts(database, scheme);
}
