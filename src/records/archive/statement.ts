import { sqlBeside } from "../../engine/database.ts";

/**
 * The statement of an SQL file beside this module, each `{name}` in it replaced by its part. Parts are put in at once, so
 * that what stands in one is never taken for the name of another.
 *
 * @example statement("core.sql", { columns: "core_id" }) // => "CREATE OR REPLACE TABLE archive_core AS\nSELECT core_id …"
 */
export function statement(file: string, parts: Readonly<Record<string, string>>): string {
  return sqlBeside(import.meta.url, file).replaceAll(/\{(\w+)\}/g, (name, part: string) => parts[part] ?? name);
}
