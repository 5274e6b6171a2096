import type { Database } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { firstDayOfMonth } from "./season-calendar.ts";
import { SEASON_SHARES, type SeasonDates, type SeasonDay, type SeasonRules, seasonDates } from "./season-dates.ts";

/** Where and when, as the tables of the days hold it: '' and −1 for no territory and no period. */
interface Scope {
  territory: string;
  period: number;
}
type DayRow = Scope & SeasonDay & { taxon_id: string; caste: string };
type OmittedRow = Scope & { taxon_id: string; caste: string; vague: number; of_no_season: number };
type FigureRow = SeasonDates & { taxon_id: string; caste: string; territory: string; period: string } & Omitted;
interface Omitted {
  vague: number;
  of_no_season: number;
}

/**
 * Fills `season_figures`: dates of the season of each taxon and caste (`all` for every caste together), in each territory
 * and period and in all, from records, visits and evenly weighed visits; silent with the reason under the setting's
 * number. Beside them stands how many records were left out: dates too vague, and specimens, literature and nests.
 */
export async function fillSeasonFigures(database: Database, scheme: Scheme): Promise<void> {
  const groupVisits = await visitsByThird(database);
  const days = await database.rows<DayRow>(
    `SELECT taxon_id, caste, territory, period, season_day AS day, records, record_squares, record_dates, visits, visit_squares, visit_dates
     FROM season_days ORDER BY taxon_id, caste, season_day, territory, period`,
  );
  const omitted = await database.rows<OmittedRow>("SELECT * FROM season_omitted ORDER BY ALL");
  const keyOf = ({ taxon_id, caste }: { taxon_id: string; caste: string }) => `${taxon_id}\t${caste}`;
  const daysOf = Map.groupBy(days, keyOf);
  const omittedOf = Map.groupBy(omitted, keyOf);
  const keys = [...new Set([...daysOf.keys(), ...omittedOf.keys()])].sort();
  const rows = keys.flatMap((key) => {
    const [taxon_id = "", caste = ""] = key.split("\t");
    const own = { days: daysOf.get(key) ?? [], omitted: omittedOf.get(key) ?? [] };
    return scopesOf(scheme).flatMap(({ territory, period, name }): FigureRow[] => {
      const within = (row: Scope) =>
        (territory === null || row.territory === territory) && (period === null || row.period === period);
      const left = total(own.omitted.filter(within));
      const some = own.days.filter(within);
      if (some.length === 0 && left.vague + left.of_no_season === 0) return [];
      const rules = rulesOf(scheme, groupVisits.filter(within));
      return seasonDates(byDay(some), rules).map((dates) => ({ taxon_id, caste, ...name, ...dates, ...left }));
    });
  });
  await fillRows(database, rows);
}

type ThirdRow = Scope & { third: number; visits: number };

function visitsByThird(database: Database): Promise<ThirdRow[]> {
  return database.rows<ThirdRow>(
    `SELECT territory, period, third, sum(visits)::BIGINT AS visits FROM season_visits
     GROUP BY territory, period, third ORDER BY territory, period, third`,
  );
}

/** All and every territory, each with all and every period; null for all. */
function scopesOf({ settings, territories }: Scheme) {
  const places = [null, ...territories.map(({ id }) => id)];
  const times = [null, ...settings.periods.map((_, index) => index)];
  return places.flatMap((territory) =>
    times.map((period) => ({
      ...{ territory, period },
      name: { territory: territory ?? "all", period: period === null ? "all" : (settings.periods[period]?.id ?? "") },
    })),
  );
}

function rulesOf({ settings: { season } }: Scheme, visits: readonly ThirdRow[]): SeasonRules {
  const groupVisits = new Float64Array(36);
  for (const { third, visits: own } of visits) groupVisits[third] = (groupVisits[third] as number) + own;
  return { ...season, firstDay: firstDayOfMonth(season.year_starts), groupVisits };
}

function total(rows: readonly Omitted[]): Omitted {
  const sum = (of: keyof Omitted) => rows.reduce((all, row) => all + row[of], 0);
  return { vague: sum("vague"), of_no_season: sum("of_no_season") };
}

/** Rows of several territories and periods as one a day. */
function byDay(rows: readonly SeasonDay[]): SeasonDay[] {
  const groups = Map.groupBy(rows, ({ day }) => day);
  return [...groups].map(([day, own]) => {
    const sum = (of: keyof SeasonDay) => own.reduce((all, row) => all + row[of], 0);
    return {
      ...{ day, records: sum("records"), record_squares: sum("record_squares"), record_dates: sum("record_dates") },
      ...{ visits: sum("visits"), visit_squares: sum("visit_squares"), visit_dates: sum("visit_dates") },
    };
  });
}

async function fillRows(database: Database, rows: readonly FigureRow[]): Promise<void> {
  const names = SEASON_SHARES.map((share) => `day_${Math.round(100 * share)}`);
  const filler = await database.fill("season_figures", {
    ...{ taxon_id: "text", caste: "text", territory: "text", period: "text", basis: "text" },
    ...{ n: "integer", vague: "integer", of_no_season: "integer" },
    ...Object.fromEntries(names.map((name) => [name, "double" as const])),
    ...{ median_low: "double", median_high: "double", judged: "boolean", reason: "text" },
  });
  const column = <Name extends keyof FigureRow>(name: Name) => rows.map((row) => row[name]);
  filler.add({
    ...{
      taxon_id: column("taxon_id"),
      caste: column("caste"),
      territory: column("territory"),
      period: column("period"),
    },
    ...{ basis: column("basis"), n: column("n"), vague: column("vague"), of_no_season: column("of_no_season") },
    ...Object.fromEntries(names.map((name, i) => [name, rows.map(({ days }) => days?.[i] ?? null)])),
    ...{ median_low: column("low"), median_high: column("high") },
    ...{ judged: rows.map(({ reason }) => reason === ""), reason: column("reason") },
  });
  filler.done();
}
