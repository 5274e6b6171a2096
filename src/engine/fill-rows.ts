import type { ColumnType, Database } from "./database.ts";

/**
 * Makes a table of rows that are worked out in TypeScript: of each row the fields that the columns name.
 *
 * @param columns name and type of each column, in their order
 * @example await fillRows(database, "pairs", { from: "integer", to: "integer" }, [{ from: 0, to: 1 }]) // SELECT count(*) FROM pairs gives 1
 */
export async function fillRows<Name extends string>(
  database: Database,
  table: string,
  columns: Readonly<Record<Name, ColumnType>>,
  rows: readonly Readonly<Record<NoInfer<Name>, string | number | boolean | null>>[],
): Promise<void> {
  const filler = await database.fill(table, columns);
  const names = Object.keys(columns) as Name[];
  filler.add(Object.fromEntries(names.map((name) => [name, rows.map((row) => row[name])])));
  filler.done();
}

/**
 * Makes a table of columns that are at hand as such.
 *
 * @param columns values of each column of `types`, all of one length
 * @example await fillColumns(database, "latest", { period: "integer" }, { period: [1] }) // SELECT count(*) FROM latest gives 1
 */
export async function fillColumns<Name extends string>(
  database: Database,
  table: string,
  types: Readonly<Record<Name, ColumnType>>,
  columns: Readonly<Record<NoInfer<Name>, (string | number | boolean | null)[]>>,
): Promise<void> {
  const filler = await database.fill(table, types);
  filler.add(columns);
  filler.done();
}
