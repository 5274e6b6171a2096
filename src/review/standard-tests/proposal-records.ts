import { type Database, sqlText } from "../../engine/database.ts";
import { columnSql, columnsOf } from "./held-tests.ts";
import { STANDARD_TESTS } from "./index.ts";

/**
 * Lays the table `standard_proposal_records` (record_no, guid, label, proposal): every record that an amendment would
 * change, which is every one of the source that says the same in the amendment's terms as its example in
 * `standard_proposals`. Needs what `runStandardTests` leaves. Proposals that restate are not among them.
 *
 * @example await layProposalRecords(database)
 */
export async function layProposalRecords(database: Database): Promise<void> {
  await database.run(
    "CREATE OR REPLACE TABLE standard_proposal_records (record_no INTEGER, guid VARCHAR, label VARCHAR, proposal VARCHAR)",
  );
  const proposed = await database.rows<{ guid: string }>(
    "SELECT DISTINCT guid FROM standard_proposals WHERE NOT restates ORDER BY guid",
  );
  for (const { guid } of proposed) {
    const test = STANDARD_TESTS.find((candidate) => candidate.guid === guid);
    if (test === undefined) continue;
    const columns = columnsOf(test);
    const texts = `SELECT record_no, source, ${columns.map(columnSql).join(", ")} FROM raw_records`;
    const same = columns.map(({ term }) => `"${term}"`).join(", ");
    await database.run(`
      INSERT INTO standard_proposal_records
      WITH texts AS (${texts}),
      examples AS (
        SELECT p.proposal, t.* EXCLUDE (record_no)
        FROM standard_proposals AS p JOIN texts AS t USING (record_no)
        WHERE p.guid = ${sqlText(guid)}
      )
      SELECT t.record_no, ${sqlText(guid)}, ${sqlText(test.label)}, e.proposal
      FROM texts AS t JOIN examples AS e USING (source, ${same})
      ORDER BY t.record_no`);
  }
}
