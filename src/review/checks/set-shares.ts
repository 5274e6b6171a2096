import type { Database } from "../../engine/database.ts";
import { type Cells, type Neighbourhood, neighbourhood } from "./neighbourhood.ts";

/** A recorder's or a source's records of one scarce taxon, against those of others around. */
export interface SetOfRecords {
  kind: "recorder" | "source";
  who: string;
  taxon_id: string;
  records: number;
  of_taxon: number;
  /** Share of others' records. */
  expected: number;
}

/** Stands for all taxa together. */
const ALL = 0;

interface Rules {
  minimum_records: number;
  minimum_others: number;
}

/**
 * Compares each set of `tried_sets` with others. Expected is the share of the taxon among others' records within the
 * distance and in the same years or the block before and after, for each of the set's squares, weighted by the set's own
 * records there; squares with fewer than `minimum_others` such records are left out on both sides. One set is held at a
 * time, beside everybody's records counted by taxon, square and years.
 *
 * Needs the tables of `set-shares.sql` and `neighbouring_squares`.
 *
 * @returns sets with `minimum_records` or more of the taxon, in order of kind, who and taxon
 */
export async function setShares(database: Database, rules: Rules): Promise<SetOfRecords[]> {
  const around = await neighbourhood(database, "all_counts");
  const everybody = await cellsByTaxon(database, around);
  const all = around.sums(everybody.get(ALL) ?? [], ({ records }) => records);
  const names = await tried(database);
  const shares: SetOfRecords[] = [];
  await eachSet(database, around, (setNo, own) => {
    const compared = comparedCells(around, { all, own: own.get(ALL) ?? [] }, rules.minimum_others);
    // What a record of others weighs, wherever it is: the sum over the set's squares that it is around.
    const weights = around.sums(compared, ({ records, others }) => records / others);
    const records = compared.reduce((sum, cell) => sum + cell.records, 0);
    const isCompared = new Set(compared.map(({ at }) => at));
    for (const [taxonNo, ofTaxon] of own) {
      if (taxonNo === ALL) continue;
      const counted = ofTaxon.reduce((sum, { at, records: here }) => sum + (isCompared.has(at) ? here : 0), 0);
      if (counted < rules.minimum_records) continue;
      const expected = weightOfOthers(weights, everybody.get(taxonNo) ?? [], ofTaxon) / records;
      shares.push({ ...names(setNo, taxonNo), records, of_taxon: counted, expected });
    }
  });
  return shares;
}

/** The set's cells with enough records of others around, and how many those are. */
function comparedCells(around: Neighbourhood, { all, own }: { all: Float64Array; own: Cells }, minimumOthers: number) {
  const ownAround = around.sums(own, ({ records }) => records);
  return own
    .map((cell) => ({ ...cell, others: (all[cell.at] ?? 0) - (ownAround[cell.at] ?? 0) }))
    .filter(({ others }) => others >= minimumOthers);
}

/** Others' records of a taxon, each by its weight; to six decimals, so that equal shares are equal. */
function weightOfOthers(weights: Float64Array, everybody: Cells, own: Cells): number {
  const mine = new Map(own.map(({ at, records }) => [at, records]));
  let sum = 0;
  for (const { at, records } of everybody) sum += (weights[at] ?? 0) * (records - (mine.get(at) ?? 0));
  return Math.round(sum * 1e6) / 1e6;
}

async function cellsByTaxon(database: Database, around: Neighbourhood): Promise<Map<number, Cells>> {
  const cells = new Map<number, Cells>();
  await database.batches(
    "SELECT taxon_no, square_id, slab, records FROM all_counts ORDER BY taxon_no, square_id, slab",
    (columns, size) => {
      for (let index = 0; index < size; index += 1) addCell(cells, around, columns, index);
    },
  );
  return cells;
}

/** Calls back with the cells of each set by taxon, one set after the other. */
async function eachSet(
  database: Database,
  around: Neighbourhood,
  use: (setNo: number, cells: ReadonlyMap<number, Cells>) => void,
): Promise<void> {
  let current = { setNo: -1, cells: new Map<number, Cells>() };
  await database.batches(
    "SELECT set_no, taxon_no, square_id, slab, records FROM set_counts ORDER BY set_no, taxon_no, square_id, slab",
    (columns, size) => {
      for (let index = 0; index < size; index += 1) {
        const setNo = Number(columns["set_no"]?.[index]);
        if (setNo !== current.setNo) {
          use(current.setNo, current.cells);
          current = { setNo, cells: new Map() };
        }
        addCell(current.cells, around, columns, index);
      }
    },
  );
  use(current.setNo, current.cells);
}

function addCell(
  cells: Map<number, Cells>,
  around: Neighbourhood,
  columns: Record<string, unknown[]>,
  index: number,
): void {
  const taxonNo = Number(columns["taxon_no"]?.[index]);
  const at = around.cellOf(Number(columns["square_id"]?.[index]), Number(columns["slab"]?.[index]));
  const cell = { at, records: Number(columns["records"]?.[index]) };
  const found = cells.get(taxonNo);
  if (found === undefined) cells.set(taxonNo, [cell]);
  else found.push(cell);
}

/** Kind, name and taxon of a set and taxon by their numbers. */
async function tried(database: Database) {
  const sets = await database.rows<{ set_no: number; kind: SetOfRecords["kind"]; who: string }>(
    "SELECT DISTINCT set_no, kind, who FROM tried_sets",
  );
  const taxa = await database.rows<{ taxon_no: number; taxon_id: string }>(
    "SELECT DISTINCT taxon_no, taxon_id FROM tried_sets",
  );
  const setOf = new Map(sets.map(({ set_no, kind, who }) => [set_no, { kind, who }]));
  const taxonOf = new Map(taxa.map(({ taxon_no, taxon_id }) => [taxon_no, taxon_id]));
  return (setNo: number, taxonNo: number) => ({
    ...(setOf.get(setNo) ?? { kind: "source" as const, who: "" }),
    taxon_id: taxonOf.get(taxonNo) ?? "",
  });
}
