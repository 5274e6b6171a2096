import type { Database } from "../../engine/database.ts";
import { fillRows } from "../../engine/fill-rows.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { bestThird, seasonFactors } from "./best-third.ts";
import { type AtlasShare, expectedChance, expectedGain, type Surrounding } from "./expected-chance.ts";

/** Further visits for which a square's gain is told. */
export const FURTHER_VISITS = 3;
/** Chance, of 1,000, below which a taxon is not listed and adds nothing to a gain. */
export const LEAST_CHANCE = 10;

interface InputRow extends Surrounding {
  no: number;
  taxon_id: string;
  squares_near: number;
  squares_with: number;
  last_year: number | null;
}
interface ExpectedRow {
  [column: string]: string | number | null;
  no: number;
  taxon_id: string;
  /** Of 1,000, as are share and frequency. */
  chance: number;
  share: number;
  frequency: number;
}

/**
 * Fills `expected_taxa`, with every chance of at least LEAST_CHANCE, and `wanted_squares`: what FURTHER_VISITS more visits
 * would add to each square that has such a taxon, and when one would add most. Gains are worked out from the rounded
 * chances and frequencies that are published, so that anybody can do it again. Ranks are 1 to the number of squares, in
 * the order of grid and code where gains are equal.
 *
 * @example await fillExpected(database, settings) // SELECT chance, squares_with FROM expected_taxa
 */
export async function fillExpected(
  database: Database,
  { coverage, season }: Pick<Scheme["settings"], "coverage" | "season">,
): Promise<void> {
  const atlas = await atlasShares(database);
  const inputs = await database.rows<InputRow>("SELECT * FROM expected_inputs ORDER BY no, taxon_id");
  const expected = inputs.flatMap((row): ExpectedRow[] => {
    const { share, frequency, chance } = expectedChance(
      row,
      atlas.get(row.taxon_id) as AtlasShare,
      coverage.minimum_visits,
    );
    const told = { share: perThousand(share), frequency: perThousand(frequency), chance: perThousand(chance) };
    const { no, taxon_id, squares_near, squares_with, visits_here, last_year } = row;
    return told.chance < LEAST_CHANCE
      ? []
      : [{ no, taxon_id, ...told, squares_near, squares_with, visits_here, last_year }];
  });
  const whole = { share: "integer", frequency: "integer", squares_near: "integer", squares_with: "integer" } as const;
  await fillRows(
    database,
    "numbered_expected",
    {
      ...{ no: "integer", taxon_id: "text", chance: "integer", ...whole },
      ...{ visits_here: "integer", last_year: "integer" },
    },
    expected as never,
  );
  await database.run(
    `CREATE OR REPLACE TABLE expected_taxa AS SELECT n.grid, n.square, e.* EXCLUDE (no)
     FROM numbered_expected AS e JOIN hectad_numbers AS n USING (no) ORDER BY n.grid, n.square, e.taxon_id;
     DROP TABLE numbered_expected`,
  );
  await fillWanted(database, expected, await seasons(database, season.minimum_visits));
}

async function atlasShares(database: Database): Promise<Map<string, AtlasShare>> {
  const rows = await database.rows<AtlasShare & { taxon_id: string }>("SELECT * FROM atlas_shares ORDER BY taxon_id");
  return new Map(rows.map((row) => [row.taxon_id, row]));
}

async function seasons(database: Database, fewest: number): Promise<Map<string, number[]>> {
  const effort = await database.rows<{ third: number; visits: number }>("SELECT third, visits FROM season_effort");
  const records = await database.rows<{ taxon_id: string; third: number; records: number }>(
    "SELECT taxon_id, third, records FROM season_all ORDER BY taxon_id, third",
  );
  const visits = byThird(effort.map(({ third, visits: made }) => [third, made]));
  return new Map(
    [...Map.groupBy(records, ({ taxon_id }) => taxon_id)].map(([taxon, own]) => [
      taxon,
      seasonFactors(byThird(own.map(({ third, records: made }) => [third, made])), visits, fewest),
    ]),
  );
}

function byThird(counts: readonly (readonly [third: number, count: number])[]): number[] {
  const all = new Array<number>(36).fill(0);
  for (const [third, count] of counts) all[third] = count;
  return all;
}

async function fillWanted(
  database: Database,
  expected: readonly ExpectedRow[],
  seasonOf: ReadonlyMap<string, number[]>,
): Promise<void> {
  const squares = [...Map.groupBy(expected, ({ no }) => no)].map(([no, own]) => {
    const taxa = own.map(({ taxon_id, chance, frequency }) => ({
      ...{ chance: chance / 1000, frequency: frequency / 1000 },
      season: seasonOf.get(taxon_id) ?? [],
    }));
    return { no, gain: perThousand(expectedGain(taxa, FURTHER_VISITS)), best_third: bestThird(taxa) };
  });
  const ranked = squares
    .sort((one, other) => other.gain - one.gain || one.no - other.no)
    .map((square, index) => ({ ...square, rank: index + 1 }));
  const columns = { no: "integer", gain: "integer", best_third: "integer", rank: "integer" } as const;
  await fillRows(database, "numbered_wanted", columns, ranked);
  await database.run(
    `CREATE OR REPLACE TABLE wanted_squares AS SELECT n.grid, n.square, w.gain, w.best_third, w.rank
     FROM numbered_wanted AS w JOIN hectad_numbers AS n USING (no) ORDER BY w.rank;
     DROP TABLE numbered_wanted; DROP TABLE near_hectads; DROP TABLE expected_inputs`,
  );
}

function perThousand(share: number): number {
  return Math.round(1000 * share);
}
