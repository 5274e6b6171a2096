import type { Database } from "../../engine/database.ts";
import { wilsonInterval } from "../binomial.ts";

/** Visits of one taxon and caste in one third of a month, and of anybody to anything of the group. */
interface ThirdRow {
  taxon_id: string;
  caste: string;
  third: number;
  visits: number;
  all_visits: number;
}

/**
 * Fills `season_shares`: in each third of a month the share of the visits to the group that recorded the taxon, with its
 * 95 % interval; none where fewer visits were made than the setting asks for. It is a share of visits on which something
 * of the group was seen, not how many there are.
 */
export async function fillSeasonShares(database: Database, fewest: number): Promise<void> {
  const rows = await database.rows<ThirdRow>(
    `SELECT s.taxon_id, s.caste, s.third, s.visits, e.visits AS all_visits
     FROM taxon_season AS s JOIN season_effort AS e USING (third)
     WHERE e.visits >= ${Math.max(1, fewest)} ORDER BY s.taxon_id, s.caste, s.third`,
  );
  const intervals = rows.map(({ visits, all_visits }) => wilsonInterval(visits, all_visits));
  const filler = await database.fill("season_shares", {
    taxon_id: "text",
    caste: "text",
    third: "integer",
    share: "double",
    low: "double",
    high: "double",
  });
  filler.add({
    taxon_id: rows.map(({ taxon_id }) => taxon_id),
    caste: rows.map(({ caste }) => caste),
    third: rows.map(({ third }) => third),
    share: rows.map(({ visits, all_visits }) => visits / all_visits),
    low: intervals.map(([low]) => low),
    high: intervals.map(([, high]) => high),
  });
  filler.done();
}
