import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import {
  BOOLEAN,
  DOUBLE,
  type DuckDBConnection,
  DuckDBDataChunk,
  DuckDBInstance,
  type DuckDBType,
  type DuckDBValue,
  INTEGER,
  VARCHAR,
} from "@duckdb/node-api";

/** A value a statement can be given. */
export type SqlValue = string | number | bigint | boolean | null;

/** Types of the columns a dictionary table can have. */
export type ColumnType = "text" | "integer" | "double" | "boolean";

const TYPES: Record<ColumnType, DuckDBType> = { text: VARCHAR, integer: INTEGER, double: DOUBLE, boolean: BOOLEAN };
const CHUNK = 2048;

/** The relational engine: the only place that knows which one it is. */
export interface Database {
  /** Runs statements; `$name` stands for a value. */
  run(sql: string, values?: Record<string, SqlValue>): Promise<void>;
  /** All rows of a query, as objects; whole numbers arrive as numbers, dates as text. */
  rows<Row>(sql: string, values?: Record<string, SqlValue>): Promise<Row[]>;
  /** Calls back with the columns of each batch of a query's rows, in order, so that no query is ever held whole. */
  batches(sql: string, use: (columns: Record<string, unknown[]>, size: number) => void): Promise<void>;
  /** Makes a table of columns and returns a writer for batches of rows, column by column. */
  fill(table: string, columns: Record<string, ColumnType>): Promise<TableFiller>;
  /**
   * Another database in the same limits, for reading what others wrote: a file can break the engine for good, and then
   * breaks that one alone. The caller closes it.
   */
  aside(): Promise<Database>;
  close(): void;
}

/** Limits of a database. */
export interface DatabaseOptions {
  /** Most memory, such as "2GB"; the engine's own default without. */
  memory?: string;
  /** Where it may write temporary files. */
  spillFolder: string;
  /** How many threads it may use; all of the machine's without. */
  threads?: number;
}

export interface TableFiller {
  add(columns: Record<string, (string | number | boolean | null)[]>): void;
  done(): void;
}

/**
 * Opens a database in memory that spills into a folder when it reaches its limit.
 *
 * @example const database = await openDatabase({ memory: "1GB", spillFolder: "/tmp/spill" })
 */
export async function openDatabase(options: DatabaseOptions): Promise<Database> {
  const { memory, spillFolder, threads } = options;
  const instance = await DuckDBInstance.create(":memory:", {
    temp_directory: spillFolder,
    autoinstall_known_extensions: "false",
    autoload_known_extensions: "false",
    preserve_insertion_order: "true",
    ...(memory === undefined ? {} : { memory_limit: memory }),
    ...(threads === undefined ? {} : { threads: String(threads) }),
  });
  const connection = await instance.connect();
  return {
    run: async (sql, values) => {
      await connection.run(sql, values);
    },
    rows: async <Row>(sql: string, values?: Record<string, SqlValue>) => {
      const reader = await connection.runAndReadAll(sql, values);
      return reader
        .getRowObjects()
        .map((row) => Object.fromEntries(Object.entries(row).map(([name, value]) => [name, plain(value)])) as Row);
    },
    batches: async (sql, use) => {
      // A connection of its own: whatever else runs on a connection, an appender too, cuts its stream short silently.
      const reading = await instance.connect();
      try {
        await readBatches(reading, sql, use);
      } finally {
        reading.closeSync();
      }
    },
    fill: (table, columns) => fillTable(connection, table, columns),
    // Its own folder to spill into, for a database that closes clears its folder.
    aside: () => openDatabase({ ...options, spillFolder: `${spillFolder}-aside` }),
    close: () => {
      connection.closeSync();
      instance.closeSync();
    },
  };
}

async function readBatches(
  connection: DuckDBConnection,
  sql: string,
  use: (columns: Record<string, unknown[]>, size: number) => void,
): Promise<void> {
  const result = await connection.stream(sql);
  const names = result.columnNames();
  for (;;) {
    const chunk = await result.fetchChunk();
    if (chunk === null || chunk.rowCount === 0) return;
    const columns: Record<string, unknown[]> = {};
    names.forEach((name, index) => {
      columns[name] = chunk.getColumnValues(index) as unknown[];
    });
    use(columns, chunk.rowCount);
  }
}

async function fillTable(
  connection: DuckDBConnection,
  table: string,
  columns: Record<string, ColumnType>,
): Promise<TableFiller> {
  const names = Object.keys(columns);
  const sqlType = { text: "VARCHAR", integer: "INTEGER", double: "DOUBLE", boolean: "BOOLEAN" };
  await connection.run(
    `CREATE OR REPLACE TABLE ${table} (${names.map((name) => `${name} ${sqlType[columns[name] ?? "text"]}`).join(", ")})`,
  );
  const appender = await connection.createAppender(table);
  const types = names.map((name) => TYPES[columns[name] ?? "text"]);
  return {
    add(values) {
      const size = values[names[0] ?? ""]?.length ?? 0;
      for (let start = 0; start < size; start += CHUNK) {
        const chunk = DuckDBDataChunk.create(types);
        chunk.setColumns(names.map((name) => (values[name] ?? []).slice(start, start + CHUNK) as DuckDBValue[]));
        appender.appendDataChunk(chunk);
      }
    },
    done() {
      appender.flushSync();
      appender.closeSync();
    },
  };
}

function plain(value: unknown): unknown {
  if (typeof value === "bigint") return Number(value);
  if (typeof value === "object" && value !== null) {
    if ("items" in value && Array.isArray(value.items)) return value.items.map(plain);
    return String(value);
  }
  return value;
}

/**
 * The text of an SQL file that stands beside its caller.
 *
 * @param caller `import.meta.url` of the calling module
 * @example sqlBeside(import.meta.url, "squares.sql")
 */
export function sqlBeside(caller: string, file: string): string {
  return readFileSync(fileURLToPath(new URL(file, caller)), "utf8");
}

/** A text as an SQL literal, where a statement takes no values. NUL ends a statement, so it stands as U+FFFD, as it is read. */
export function sqlText(text: string): string {
  return `'${text.replaceAll("'", "''").replaceAll("\0", "\uFFFD")}'`;
}

/**
 * The path of one file to read, as an SQL literal. The engine takes marks such as * in a path for a pattern, and would read
 * walks1.csv for walks[1].csv.
 *
 * @example sqlPath("records/walks[1].csv") // => "'records/walks[[]1].csv'"
 */
export function sqlPath(path: string): string {
  return sqlText(path.replaceAll(/[*?[]/g, "[$&]"));
}
