import type { Database } from "../engine/database.ts";

/** Squares of one taxon between two periods, counted by what can be said of them; periods by number. */
export interface ChangeCounts {
  from_period: number;
  to_period: number;
  minimum_visits: number;
  resolution_m: 10_000 | 2_000;
  territory: string;
  retained: number;
  gained: number;
  lost: number;
  recorded_both_not_covered: number;
  recorded_both_unsettled: number;
  not_comparable_since: number;
  not_comparable_before: number;
  covered_both_no_record: number;
  covered_one_no_record: number;
  covered_neither: number;
  squares_from: number;
  squares_to: number;
  /** Records in the 10 km squares where both periods have some, and those of them good to 2 km. */
  tetrads: { records_from: number; at_tetrad_from: number; records_to: number; at_tetrad_to: number };
}

/** As the database gives it. */
type Row = Omit<ChangeCounts, "tetrads"> & ChangeCounts["tetrads"] & { taxon_id: string };

const COUNTS = `
  SELECT c.*, coalesce(t.records_from, 0) AS records_from, coalesce(t.at_tetrad_from, 0) AS at_tetrad_from,
    coalesce(t.records_to, 0) AS records_to, coalesce(t.at_tetrad_to, 0) AS at_tetrad_to
  FROM change_counts AS c
  LEFT JOIN tetrad_shares AS t USING (taxon_id, from_period, to_period, territory)
  CROSS JOIN compared AS p
  ORDER BY c.taxon_id, c.from_period <> p.from_period OR c.to_period <> p.to_period, c.from_period, c.to_period,
    c.minimum_visits, c.resolution_m DESC, c.territory`;

/** The counted squares of every taxon: the pair of the maps first, under each rule the larger squares first. */
export async function changeCounts(database: Database): Promise<Map<string, ChangeCounts[]>> {
  const rows = await database.rows<Row>(COUNTS);
  const groups = Map.groupBy(rows, ({ taxon_id }) => taxon_id);
  return new Map([...groups].map(([id, own]) => [id, own.map(withoutTaxon)]));
}

function withoutTaxon({
  taxon_id: _,
  records_from,
  at_tetrad_from,
  records_to,
  at_tetrad_to,
  ...row
}: Row): ChangeCounts {
  return { ...row, tetrads: { records_from, at_tetrad_from, records_to, at_tetrad_to } };
}
