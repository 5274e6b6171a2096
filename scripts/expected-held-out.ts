/**
 * How well the chances of what is expected in squares come true: hides records of the latest period of a random tenth of
 * the covered squares of the demonstration, measures again, and sets the chances beside what had been recorded there.
 * Twice: all of those records hidden, and those of half of the visits, where the rest stands for further visits.
 */
import { join } from "node:path";
import { parseArgs } from "node:util";
import { reviewScheme } from "../src/build/pipeline.ts";
import { createProgress } from "../src/build/progress.ts";
import type { Database } from "../src/engine/database.ts";
import { measure } from "../src/measures/measure-stage.ts";
import type { Scheme } from "../src/scheme/scheme.ts";

const { values } = parseArgs({ options: { content: { type: "string", default: "content" } } });
const workFolder = join(import.meta.dirname, "../.build/expected-held-out");

/** The first six hexadecimal figures of a hash: the same draw on every machine. */
const draw = (text: string) => `('0x' || substr(md5(${text}), 1, 6))::INTEGER`;
const VISIT = "r.visit_place || r.first_day || coalesce(r.recorder, '')";
/** What is hidden of the squares that were drawn. */
const HIDDEN = { "all records": "true", "half of the visits": `${draw(`'half ' || ${VISIT}`)} % 2 = 0` };

/** Chances by tenth, beside the share of them that came true and the share further visits should have found. */
const TOLD = `
  SELECT least(chance // 100, 9) AS tenth, count(*) AS chances, sum(chance) / 1000 AS foretold, count(*) FILTER (found) AS found,
    sum(chance / 1000 * (1 - (1 - frequency / 1000) ** further)) AS further_visits_should_find
  FROM told GROUP BY tenth ORDER BY tenth`;

async function drawSquares(database: Database, latest: number): Promise<void> {
  await database.run(`
    CREATE TABLE all_records AS SELECT * FROM records;
    CREATE TABLE held AS SELECT DISTINCT taxon_id, grid, square FROM square_sightings
      WHERE resolution_m = 10000 AND period = ${latest} AND established;
    CREATE TABLE drawn AS SELECT grid, square FROM naming_visits
      WHERE resolution_m = 10000 AND period = ${latest} AND visits >= (SELECT minimum_visits FROM rules)
        AND ${draw("'draw 1 ' || grid || square")} % 10 = 0;
    CREATE TABLE made AS SELECT n.grid, n.square, v.visits FROM hectad_visits AS v JOIN hectad_numbers AS n USING (no)`);
}

async function setBeside(database: Database, scheme: Scheme, latest: number, hidden: string): Promise<void> {
  await database.run(`
    CREATE OR REPLACE VIEW records AS SELECT r.* FROM all_records AS r
    WHERE NOT (r.period = ${latest} AND coalesce(${hidden}, true)
      AND EXISTS (SELECT 1 FROM drawn AS d WHERE d.grid = r.grid AND d.square = r.hectad))`);
  await measure(database, scheme, new Map(), []);
  await database.run(`
    CREATE OR REPLACE TABLE told AS
    SELECT e.chance, e.frequency, m.visits - e.visits_here AS further, h.taxon_id IS NOT NULL AS found
    FROM expected_taxa AS e
    JOIN drawn USING (grid, square)
    JOIN made AS m USING (grid, square)
    LEFT JOIN held AS h ON h.grid = e.grid AND h.square = e.square AND h.taxon_id = e.taxon_id`);
}

const progress = createProgress({ stream: process.stderr, quiet: false, isTerminal: false, colour: false });
const { scheme, database } = await reviewScheme({ content: values.content, workFolder, progress });
const latest = scheme.settings.periods.length - 1;
await measure(database, scheme, new Map(), []);
await drawSquares(database, latest);
for (const [name, hidden] of Object.entries(HIDDEN)) {
  await setBeside(database, scheme, latest, hidden);
  process.stdout.write(`\nHidden: ${name}\n`);
  const rows = await database.rows<Record<string, number>>(TOLD);
  for (const row of rows) process.stdout.write(`${JSON.stringify(row)}\n`);
}
database.close();
