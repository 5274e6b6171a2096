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

const LISTS = "SELECT * FROM rate_lists ORDER BY square_no, list";
const NAMED = "SELECT * FROM rate_named ORDER BY taxon_id, list";
const TANGLED = "SELECT * FROM rate_tangled ORDER BY taxon_id, list";
const SQUARES = `
  SELECT c.counts_for AS taxon_id, q.square_no
  FROM (SELECT DISTINCT taxon_id, grid || ' ' || hectad AS square FROM sightings WHERE present AND hectad IS NOT NULL) AS s
  JOIN (SELECT DISTINCT square, square_no FROM rate_lists) AS q USING (square)
  JOIN closure AS c ON c.taxon_id = s.taxon_id
  GROUP BY c.counts_for, q.square_no ORDER BY c.counts_for, q.square_no`;
/** Records are numbered once, so that their numbers tell which there are. */
const FINGERPRINT = "SELECT count(*) || '/' || sum(hash(record_no)::HUGEINT) AS fingerprint FROM set_of_rate";

/**
 * Joins visits to lists and counts what each names, once for all parts of the evidence.
 *
 * @example await layLists(database, scheme) // SELECT * FROM list_sizes
 */
export async function layLists(database: Database, { checklist }: Pick<Scheme, "checklist">): Promise<void> {
  await database.run(sqlBeside(import.meta.url, "reporting-rate-outings.sql"));
  await fillSizes(database, lengthsOf(checklist));
}

/**
 * Lays the view `set_of_rate`: the complete lists of a part of the evidence, record by record.
 *
 * @param where the part, as a condition on rows of the view `evidence`; a list's length there is that of the whole list
 * @returns the same text for the same records
 */
export async function laySetOfRate(database: Database, where: string): Promise<string> {
  await database.run(`CREATE OR REPLACE VIEW set_of_rate AS
    SELECT * FROM (
      SELECT e.* REPLACE (z.list_length AS list_length, true AS complete_list), o.list
      FROM evidence AS e JOIN rate_outings AS o USING (visit) JOIN list_sizes AS z USING (list)
    ) WHERE ${where}`);
  const [row] = await database.rows<{ fingerprint: string | null }>(FINGERPRINT);
  return row?.fingerprint ?? "none";
}

/**
 * Reads the complete lists that `set_of_rate` holds.
 *
 * @example (await readCompleteLists(database, scheme)).shortest // => 1
 */
export async function readCompleteLists(
  database: Database,
  { checklist }: Pick<Scheme, "checklist">,
): Promise<CompleteLists> {
  await database.run(sqlBeside(import.meta.url, "reporting-rate.sql"));
  const lists = await readLists(database);
  const taxa = await readTaxa(database, lists.indexOf, lengthsOf(checklist));
  await database.run("DROP TABLE rate_lists; DROP TABLE rate_named; DROP TABLE rate_tangled");
  return { ...lists, taxa };
}

/** The fewest taxa behind some names, each combination counted once. */
function lengthsOf(checklist: Scheme["checklist"]): (names: string) => number {
  const known = new Map<string, number>([["", 0]]);
  return (names) => {
    const length = known.get(names) ?? fewestTaxa(names.split("\u001f"), checklist);
    known.set(names, length);
    return length;
  };
}

/** Fills `list_sizes`, the number of taxa on each list. */
async function fillSizes(database: Database, lengthOf: (names: string) => number): Promise<void> {
  const sizes: { list: number[]; list_length: number[] } = { list: [], list_length: [] };
  await database.batches("SELECT * FROM rate_lengths ORDER BY list", ({ list, names, all_names }, size) => {
    for (let row = 0; row < size; row += 1) {
      const text = all_names?.[row] as string | null;
      sizes.list.push(Number(list?.[row]));
      sizes.list_length.push(text === null ? Number(names?.[row]) : lengthOf(text));
    }
  });
  const filler = await database.fill("list_sizes", { list: "integer", list_length: "integer" });
  filler.add(sizes);
  filler.done();
}

async function readTaxa(
  database: Database,
  indexOf: ReadonlyMap<number, number>,
  lengthOf: (names: string) => number,
): Promise<Map<string, OnLists>> {
  const tangled = new Map<string, number>();
  await database.batches(TANGLED, ({ taxon_id, list, names }, size) => {
    for (let row = 0; row < size; row += 1)
      tangled.set(`${list?.[row]} ${taxon_id?.[row]}`, lengthOf(names?.[row] as string));
  });
  const taxa = new Map<string, { lists: number[]; found: boolean[]; others: number[]; squares: Set<number> }>();
  const ofTaxon = (id: string) => {
    const known = taxa.get(id) ?? { lists: [], found: [], others: [], squares: new Set() };
    taxa.set(id, known);
    return known;
  };
  await database.batches(NAMED, ({ taxon_id, list, found, others }, size) => {
    for (let row = 0; row < size; row += 1) {
      const own = ofTaxon(taxon_id?.[row] as string);
      own.lists.push(indexOf.get(Number(list?.[row])) as number);
      own.found.push(found?.[row] as boolean);
      own.others.push(Number(others?.[row] ?? tangled.get(`${list?.[row]} ${taxon_id?.[row]}`)));
    }
  });
  for (const { taxon_id, square_no } of await database.rows<{ taxon_id: string; square_no: number }>(SQUARES))
    ofTaxon(taxon_id).squares.add(square_no);
  return taxa;
}

async function readLists(database: Database) {
  const columns = ["square_no", "period", "year", "day_of_year", "list_length"] as const;
  const values = Object.fromEntries(columns.map((name) => [name, [] as number[]])) as Record<
    (typeof columns)[number],
    number[]
  >;
  const provisional: boolean[] = [];
  const indexOf = new Map<number, number>();
  await database.batches(LISTS, (batch, size) => {
    for (let row = 0; row < size; row += 1) {
      indexOf.set(Number(batch["list"]?.[row]), provisional.length);
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
    indexOf,
  };
}
