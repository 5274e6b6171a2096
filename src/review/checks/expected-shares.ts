import type { Database } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { expectedShare, shrunkShare } from "../expected-share.ts";

/** How much of a report counts that is one person's word alone. */
const LONE_WORD = 0.5;

/**
 * From counted visits to expected shares: tables `place_shares` (place_no, share, visits, reports, nowhere: nobody else
 * reported it anywhere in those years) of the places with visits enough, and `season_factors` (taxon_no, band, week,
 * factor: how many times oftener than on average; 1 where fewer than `season_minimum` were reported at that latitude).
 */
export async function layExpectedShares(database: Database, { settings }: Scheme): Promise<void> {
  const { expected_reports, season_minimum, prior_visits } = settings.checks.unexpected;
  await layPlaceShares(database, expected_reports, prior_visits);
  await laySeasonFactors(database, season_minimum, prior_visits);
}

async function layPlaceShares(database: Database, enough: number, priorVisits: number): Promise<void> {
  const filler = await database.fill("place_shares", {
    place_no: "integer",
    share: "double",
    visits: "integer",
    reports: "integer",
    nowhere: "boolean",
  });
  await database.batches(
    `SELECT place_no, any_value(all_share) AS all_share, any_value(y.reports) = 0 AS nowhere,
       CASE WHEN nowhere THEN any_value(y.visits) ELSE sum(r.visits) END::INTEGER AS visits, sum(r.reports)::INTEGER AS reports,
       list_append(list(r.visits ORDER BY ring), any_value(y.visits))::INTEGER[] AS ring_visits,
       list_append(list(r.reports * CASE WHEN lone THEN ${LONE_WORD} ELSE 1 END ORDER BY ring), any_value(y.reports))::DOUBLE[] AS ring_reports
     FROM place_rings AS r JOIN place_years AS y USING (place_no) GROUP BY place_no
     HAVING CASE WHEN any_value(y.reports) = 0 THEN any_value(y.visits) ELSE sum(r.visits) END * any_value(all_share) >= ${enough}
     ORDER BY place_no`,
    (columns, size) => {
      const share = Array.from({ length: size }, (_, index) => {
        const reports = numbers(columns["ring_reports"]?.[index]);
        const rings = numbers(columns["ring_visits"]?.[index]).map((visits, ring) => ({
          visits,
          reports: reports[ring] ?? 0,
        }));
        return expectedShare({ share: Number(columns["all_share"]?.[index]), visits: priorVisits }, rings);
      });
      const whole = (name: string) => (columns[name] ?? []).map(Number);
      const nowhere = (columns["nowhere"] ?? []).map(Boolean);
      filler.add({ place_no: whole("place_no"), share, visits: whole("visits"), reports: whole("reports"), nowhere });
    },
  );
  filler.done();
}

/** A list as the engine hands it over. */
function numbers(list: unknown): number[] {
  return typeof list === "object" && list !== null && "items" in list && Array.isArray(list.items)
    ? list.items.map(Number)
    : [];
}

async function laySeasonFactors(database: Database, enough: number, priorVisits: number): Promise<void> {
  const weeks = await database.rows<{
    taxon_no: number;
    band: number;
    week: number;
    visits: number;
    reports: number;
    all_visits: number;
    all_reports: number;
  }>("SELECT * FROM season_weeks ORDER BY taxon_no, band, week");
  const filler = await database.fill("season_factors", {
    taxon_no: "integer",
    band: "integer",
    week: "integer",
    factor: "double",
  });
  filler.add({
    taxon_no: weeks.map(({ taxon_no }) => taxon_no),
    band: weeks.map(({ band }) => band),
    week: weeks.map(({ week }) => week),
    factor: weeks.map(({ visits, reports, all_visits, all_reports }) => {
      // The record's own visit is left out on both sides.
      const [others, share] = [all_reports - 1, (all_reports - 1) / Math.max(1, all_visits - 1)];
      if (others < enough) return 1;
      const near = { visits: Math.max(0, visits - 1), reports: Math.max(0, reports - 1) };
      return shrunkShare({ share, visits: priorVisits }, near) / share;
    }),
  });
  filler.done();
}
