import { sqlBeside } from "../engine/database.ts";

/**
 * The text of an SQL file that stands beside its caller, with `{name}` filled in.
 *
 * @param caller `import.meta.url` of the calling module
 * @param values numbers, or SQL that this program wrote itself; never text of records
 * @example sqlWith(import.meta.url, "far-in-a-day.sql", { far_m: 150_000 })
 */
export function sqlWith(caller: string, file: string, values: Readonly<Record<string, number | string>>): string {
  return Object.entries(values).reduce(
    (sql, [name, value]) => sql.replaceAll(`{${name}}`, String(value)),
    sqlBeside(caller, file),
  );
}
