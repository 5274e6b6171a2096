import type { RecordField, SourceSetting } from "../scheme/settings.ts";
import type { ColumnMapping } from "./column-mapping.ts";
import type { FileFinding } from "./finding.ts";

/** What every record needs: fields that can say it, the one to map, and headers people give it. */
const NEEDED: readonly { what: string; fields: readonly RecordField[]; map: RecordField; likely: RegExp }[] = [
  {
    what: "name",
    fields: ["scientificName"],
    map: "scientificName",
    likely: /species|taxon|name|latin|binom/i,
  },
  {
    what: "date",
    fields: ["eventDate", "year", "verbatimEventDate"],
    map: "eventDate",
    likely: /date|when|day|seen/i,
  },
  {
    what: "place",
    fields: ["gridReference", "decimalLatitude", "easting"],
    map: "gridReference",
    likely: /grid|ref|square|gr$/i,
  },
];

/**
 * A finding for each thing every record needs and no column and no constant of the source gives: one for the file,
 * with the line to write in the settings, before each of its rows says the same.
 *
 * @param file its name in findings
 * @param mapping what was found among its headers
 * @param constants of the source's settings
 * @param row of the header
 * @example missingColumns("a.csv", mapColumns(["Species", "Date"], {}), {})[0]?.wayOut // "write columns: { scientificName: Species } in the source, if that is it"
 */
export function missingColumns(
  file: string,
  mapping: Pick<ColumnMapping, "columns" | "unknown">,
  constants: SourceSetting["constants"],
  row = 1,
): FileFinding[] {
  const unknown = mapping.unknown.filter((header) => header !== "");
  return NEEDED.filter(
    ({ fields }) => !fields.some((field) => mapping.columns.has(field) || constants[field] !== undefined),
  ).map(({ what, map, likely }) => {
    const header = unknown.find((name) => likely.test(name));
    return {
      file,
      row,
      field: map,
      value: unknown.join(", ").slice(0, 200),
      check: "missing_column",
      severity: "ask",
      message: `no column is known to hold the ${what}, so no row can be used`,
      wayOut:
        header === undefined
          ? `map the column that does: columns: { ${map}: its header } in the source`
          : `write columns: { ${map}: ${header} } in the source, if that is it`,
    };
  });
}
