import { sqlPath, sqlText } from "../../engine/database.ts";
import type { Binding } from "./bind-fields.ts";
import { columnName, fieldsOf, LINKS, type LoadedFile, type LoadedTable } from "./load-table.ts";

/**
 * A table as a query: `location` (number of its file), `file_row`, `core_id`, then its fields and links as text, empty
 * where a row has no value and the description no default. `\N`, which databases write for no value, is none.
 */
export function tableQuery(table: LoadedTable): string {
  const fields = [...fieldsOf(table)];
  const parts = table.files.flatMap((file, location) => {
    if (file.read.read + file.read.rescued.length === 0) return [];
    const columns = [
      `${location} AS location`,
      "file_row::INTEGER AS file_row",
      `${value(file, { index: file.id, default: "" })} AS core_id`,
      ...fields.map((field) => `${value(file, file.fields.fields.get(field))} AS "${field}"`),
      ...LINKS.map((link) => `${value(file, file.links.get(link))} AS "link_${link}"`),
    ];
    return [`SELECT ${columns.join(", ")} FROM read_parquet(${sqlPath(file.parquet)})`];
  });
  if (parts.length > 0) return parts.join("\nUNION ALL\n");
  const names = ["core_id", ...fields, ...LINKS.map((link) => `link_${link}`)];
  return `SELECT 0 AS location, 0 AS file_row, ${names.map((name) => `'' AS "${name}"`).join(", ")} WHERE false`;
}

function value({ look }: LoadedFile, binding: Binding | undefined): string {
  const otherwise = sqlText(binding?.default ?? "");
  const index = binding?.index;
  return index === undefined || index >= look.width
    ? otherwise
    : `coalesce(nullif(nullif(${columnName(index)}, ''), '\\N'), ${otherwise})`;
}
