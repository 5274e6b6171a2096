import { type Database, sqlBeside } from "../../engine/database.ts";
import { fewestTaxa } from "../../names/fewest-taxa.ts";
import type { Scheme } from "../../scheme/scheme.ts";

/** Complete lists, one an index, those of a 10 km square one after the other. */
export interface CompleteLists {
  /** Number of the 10 km square, from 0, never falling. */
  readonly square: Int32Array;
  /** Number of the period; −1 outside all. */
  readonly period: Int32Array;
  readonly year: Int32Array;
  /** 1 to 366. */
  readonly dayOfYear: Int32Array;
  /** Taxa named. */
  readonly length: Int32Array;
  readonly provisional: readonly boolean[];
  /** Length of the shortest. */
  readonly shortest: number;
  /** What bears on each taxon. */
  readonly taxa: ReadonlyMap<string, OnLists>;
  /** The same for the same lists with the same names, whatever set of evidence they are of. */
  readonly fingerprint: string;
}

/** Lists that name a taxon or one above or below it, and where it was ever recorded. */
export interface OnLists {
  readonly lists: readonly number[];
  readonly found: readonly boolean[];
  /** Taxa the list names beside the taxon and what stands above or below it. */
  readonly others: readonly number[];
  /** Squares with any record of it, from any evidence. */
  readonly squares: ReadonlySet<number>;
}

const LISTS = "SELECT * FROM rate_lists ORDER BY square_no, visit";
const NAMED = "SELECT * FROM rate_named ORDER BY taxon_id, visit";
const TANGLED = "SELECT * FROM rate_tangled ORDER BY taxon_id, visit";
const SQUARES = `
  SELECT c.counts_for AS taxon_id, q.square_no
  FROM (SELECT DISTINCT taxon_id, grid || ' ' || hectad AS square FROM sightings WHERE present AND hectad IS NOT NULL) AS s
  JOIN (SELECT DISTINCT square, square_no FROM rate_lists) AS q USING (square)
  JOIN closure AS c ON c.taxon_id = s.taxon_id
  GROUP BY c.counts_for, q.square_no ORDER BY c.counts_for, q.square_no`;
const FINGERPRINT = `
  SELECT CAST((SELECT bit_xor(hash(visit, square_no, period, year, list_length, provisional)) FROM rate_lists) AS VARCHAR)
    || '/' || CAST((SELECT bit_xor(hash(taxon_id, visit, found, others)) FROM rate_named) AS VARCHAR) AS fingerprint`;

/**
 * Reads the complete lists of a part of the evidence.
 *
 * @param where condition on rows of the view `evidence` that a list must have one of, or nothing for the set's rows
 * @example (await readCompleteLists(database, scheme, "set_evidence")).shortest // => 1
 */
export async function readCompleteLists(
  database: Database,
  { checklist }: Pick<Scheme, "checklist">,
  rows: "set_evidence" | "evidence",
): Promise<CompleteLists> {
  await database.run(`CREATE OR REPLACE TABLE rate_visits AS
    SELECT visit, bool_or(provisional) AS provisional FROM ${rows} WHERE complete_list GROUP BY visit`);
  await database.run(sqlBeside(import.meta.url, "reporting-rate.sql").replaceAll("set_evidence", rows));
  const lists = await readLists(database);
  const othersOfTangled = await readTangled(database, checklist);
  const taxa = new Map<string, { lists: number[]; found: boolean[]; others: number[]; squares: Set<number> }>();
  const ofTaxon = (id: string) => {
    const known = taxa.get(id) ?? { lists: [], found: [], others: [], squares: new Set() };
    taxa.set(id, known);
    return known;
  };
  await database.batches(NAMED, ({ taxon_id, visit, found, others }, size) => {
    for (let row = 0; row < size; row += 1) {
      const own = ofTaxon(taxon_id?.[row] as string);
      own.lists.push(lists.indexOfVisit.get(Number(visit?.[row])) as number);
      own.found.push(found?.[row] as boolean);
      const counted = others?.[row] ?? othersOfTangled.get(`${visit?.[row]} ${taxon_id?.[row]}`);
      own.others.push(Number(counted));
    }
  });
  for (const { taxon_id, square_no } of await database.rows<{ taxon_id: string; square_no: number }>(SQUARES))
    ofTaxon(taxon_id).squares.add(square_no);
  const [row] = await database.rows<{ fingerprint: string | null }>(FINGERPRINT);
  await database.run("DROP TABLE rate_visits; DROP TABLE rate_lists; DROP TABLE rate_names; DROP TABLE rate_named");
  await database.run("DROP TABLE rate_tangled");
  return { ...lists, taxa, fingerprint: row?.fingerprint ?? "none" };
}

async function readLists(database: Database) {
  const columns = ["square_no", "period", "year", "day_of_year", "list_length"] as const;
  const values = Object.fromEntries(columns.map((name) => [name, [] as number[]])) as Record<
    (typeof columns)[number],
    number[]
  >;
  const provisional: boolean[] = [];
  const indexOfVisit = new Map<number, number>();
  await database.batches(LISTS, (batch, size) => {
    for (let row = 0; row < size; row += 1) {
      indexOfVisit.set(Number(batch["visit"]?.[row]), provisional.length);
      for (const name of columns) values[name].push(Number(batch[name]?.[row] ?? -1));
      provisional.push(batch["provisional"]?.[row] as boolean);
    }
  });
  return {
    square: Int32Array.from(values.square_no),
    period: Int32Array.from(values.period),
    year: Int32Array.from(values.year),
    dayOfYear: Int32Array.from(values.day_of_year),
    length: Int32Array.from(values.list_length),
    provisional,
    shortest: values.list_length.reduce((least, length) => Math.min(least, length), Infinity),
    indexOfVisit,
  };
}

/** The fewest other taxa on lists whose names hold one another. */
async function readTangled(database: Database, checklist: Scheme["checklist"]): Promise<Map<string, number>> {
  const known = new Map<string, number>([["", 0]]);
  const others = new Map<string, number>();
  await database.batches(TANGLED, ({ taxon_id, visit, names }, size) => {
    for (let row = 0; row < size; row += 1) {
      const text = names?.[row] as string;
      const length = known.get(text) ?? fewestTaxa(text.split("\u001f"), checklist);
      known.set(text, length);
      others.set(`${visit?.[row]} ${taxon_id?.[row]}`, length);
    }
  });
  return others;
}
