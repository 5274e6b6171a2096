import type { RecordField, SourceSetting } from "../../scheme/settings.ts";
import { mapColumns } from "../column-mapping.ts";
import type { FieldDescription, TableDescription } from "./description.ts";
import { fieldOfTerm, termName } from "./terms.ts";

/** Where the values of a field come from: a column, a value for rows without one, or both. */
export type Binding = Pick<FieldDescription, "index" | "default">;

/** Where a table holds which field. */
export interface TableFields {
  fields: Map<RecordField, Binding>;
  /** Described columns that fill no field. */
  unused: FieldDescription[];
  /** Terms of a field that another fills already; the first counts. */
  repeated: string[];
  /** Fields the source's settings map to something that is here. */
  mapped: RecordField[];
}

/**
 * Binds the fields of a table by its description. Columns are known by their index; headers count only where the
 * source's settings name one.
 *
 * @param headers the table's own, one for each column
 * @param own the source's columns: field to a term of the archive, a header, or "#" and the number of a column
 */
export function bindFields(
  table: TableDescription,
  headers: readonly string[],
  own: SourceSetting["columns"],
): TableFields {
  const described = table.fields.filter(({ index, default: value }) => index !== undefined || value !== "");
  const chosen = chosenFields(described, headers, own);
  const fields = new Map<RecordField, Binding>(chosen);
  const taken = new Set<Binding>(chosen.values());
  const unused: FieldDescription[] = [];
  const repeated: string[] = [];
  for (const one of described) {
    if (taken.has(one)) continue;
    const field = fieldOfTerm(one.term);
    if (field === undefined) unused.push(one);
    else if (fields.has(field)) repeated.push(one.term);
    else fields.set(field, one);
  }
  return { fields, unused, repeated, mapped: [...chosen.keys()] };
}

function chosenFields(
  described: readonly FieldDescription[],
  headers: readonly string[],
  own: SourceSetting["columns"],
): Map<RecordField, Binding> {
  const terms = described.map(({ term }) => termName(term));
  const chosen = new Map<RecordField, Binding>();
  for (const [field, name] of Object.entries(own) as [RecordField, string][]) {
    const term = name.trim().startsWith("#") ? undefined : described[placeOf(terms, field, name) ?? -1];
    const index = placeOf(headers, field, name);
    if (term !== undefined) chosen.set(field, term);
    else if (index !== undefined) chosen.set(field, { index, default: "" });
  }
  return chosen;
}

function placeOf(names: readonly string[], field: RecordField, name: string): number | undefined {
  const { columns, missing } = mapColumns(names, { [field]: name });
  return missing.length > 0 ? undefined : columns.get(field);
}
