import type { SeasonAnswer } from "./answers.ts";
import type { Desk } from "./desk.ts";

const THIRDS = 36;

/** When a taxon is recorded: records in use by caste and third of a month, and visits to the group. */
export async function seasonOf({ database, scheme }: Desk, taxon: string): Promise<SeasonAnswer> {
  const rows = await database.rows<{ caste: string; third: number; records: number }>(
    "SELECT caste, third, records FROM desk_season WHERE taxon_id = $taxon ORDER BY caste, third",
    { taxon },
  );
  const effort = await database.rows<{ third: number; visits: number }>(
    "SELECT third, visits FROM desk_effort ORDER BY third",
  );
  const named = [...scheme.settings.castes, { id: "not_stated", label: "Not stated" }];
  return {
    castes: named.flatMap(({ id, label }) => {
      const own = rows.filter(({ caste }) => caste === id);
      const thirds = overTheYear(own.map(({ third, records }) => [third, records]));
      const records = thirds.reduce((sum, count) => sum + count, 0);
      return records === 0 ? [] : [{ id, label, records, thirds }];
    }),
    visits: overTheYear(effort.map(({ third, visits }) => [third, visits])),
  };
}

function overTheYear(counts: readonly (readonly [third: number, count: number])[]): number[] {
  const year = Array.from({ length: THIRDS }, () => 0);
  for (const [third, count] of counts) year[third] = count;
  return year;
}
