/**
 * Invents the demonstration, reviews its records, and prints which of the errors put into it the checks find, and how many
 * sound records they ask about. Writes .build/known-errors/ and nothing else.
 *
 *   node scripts/known-errors.ts [--seed N] [--missed KIND]
 */
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { knownErrors } from "./known-errors/known-errors.ts";
import { reviewDemonstration } from "./known-errors/review-demonstration.ts";

const FOLDER = fileURLToPath(new URL("../.build/known-errors", import.meta.url));

const { values } = parseArgs({ options: { seed: { type: "string", default: "1" }, missed: { type: "string" } } });
const { database, scheme } = await reviewDemonstration(join(FOLDER, values.seed), Number(values.seed));
const { table, sound, soundRecords } = await knownErrors(database, scheme);
const line = (...cells: (string | number)[]) =>
  console.log(cells.map((cell, i) => (i === 0 ? String(cell).padEnd(26) : String(cell).padStart(11))).join(""));
line("kind of error", "put in", "traceable", "caught", "others");
for (const row of table) line(row.kind, row.injected, row.detectable, row.caught, row.caught_without_trace);
const sum = (of: "injected" | "detectable" | "caught") => table.reduce((total, row) => total + row[of], 0);
line("all", sum("injected"), sum("detectable"), sum("caught"));
console.log(
  `\n${((100 * sum("caught")) / sum("detectable")).toFixed(1)} % of those that leave a trace are caught; by:`,
);
for (const { kind, checks } of table) console.log(`${kind.padEnd(26)} ${checks}`);
console.log(`\n${soundRecords} sound records; asked about or held:`);
for (const { check_name, records } of sound)
  line(check_name, records, `${((100 * records) / soundRecords).toFixed(2)} %`);
if (values.missed !== undefined)
  console.table(
    await database.rows(
      `SELECT DISTINCT e.trace, t.source, t.record_key, t.said_name, t.said_date, t.said_place, t.said_kind, t."recordedBy"
       FROM found_errors AS e JOIN record_texts AS t USING (record_no)
       WHERE e.kind = $kind AND e.trace <> '' AND e.check_name IS NULL ORDER BY ALL`,
      { kind: values.missed },
    ),
  );
database.close();
