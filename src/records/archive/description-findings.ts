import { mapColumns } from "../column-mapping.ts";
import type { UnmappedColumn } from "../file-read.ts";
import type { FileFinding } from "../finding.ts";
import type { RecordsInput } from "../read-records.ts";
import { unmappedColumns } from "../unmapped-columns.ts";
import { type ArchiveRemark, remarkFinding } from "./archive-remark.ts";
import type { FieldDescription } from "./description.ts";
import { LINKS, type LoadedFile } from "./load-table.ts";
import type { ArchivePlan } from "./plan-archive.ts";
import { termName } from "./terms.ts";

/** What there is to say of an archive's description and the source's settings together. */
export function describedFindings(
  { name, source }: RecordsInput,
  { records, core }: ArchivePlan,
  files: readonly LoadedFile[],
): FileFinding[] {
  const findings: FileFinding[] = [];
  const mapped = new Set(files.flatMap(({ fields }) => fields.mapped));
  for (const [field, header] of Object.entries(source.columns))
    if (![...mapped].some((one) => one === field))
      findings.push(
        remarkFinding(name, {
          check: "mapped_header_missing",
          severity: "ask",
          value: header,
          message: `the settings map “${header}”, which is neither a header nor a term of the archive`,
          wayOut: "correct columns in the source's settings",
        }),
      );
  const formats = [...records, ...(core === undefined ? [] : [core.table])].map(({ dateFormat }) => dateFormat);
  const format = formats.find((one) => one !== "" && !/^YYYY/i.test(one));
  if (format !== undefined && source.date_format === "iso")
    findings.push(
      remarkFinding(name, {
        check: "archive_date_format",
        severity: "note",
        value: format,
        message: `meta.xml says dates are written ${format}; they were read as the source's date_format says`,
        wayOut: `set date_format: ${/^D/i.test(format) ? "day-first" : "month-first"} for the source if they are`,
      }),
    );
  return findings;
}

/** Notes of the columns of a file that are not used, and a question of those that fill a field twice. */
export function unusedTerms(file: LoadedFile): FileFinding[] {
  const said: ArchiveRemark[] = file.fields.repeated.map((term) => ({
    check: "repeated_header",
    severity: "ask",
    value: term,
    message: `meta.xml binds ${termName(term)} twice; the first counts`,
    wayOut: "correct meta.xml, or map the right one in the source's columns",
  }));
  const unknown = unknownTerms(file);
  const known = file.fields.unused.filter((field) => !unknown.includes(field) && !isLink(field));
  if (unknown.length > 0)
    said.unshift({
      check: "unknown_header",
      severity: "note",
      value: unknown.map(({ term }) => term).join(", "),
      message: `${unknown.length === 1 ? "one described column is" : `${unknown.length} described columns are`} not used`,
      wayOut: "map a term in the source's columns if it holds a field",
    });
  if (known.length > 0)
    said.unshift({
      check: "unused_terms",
      severity: "note",
      value: known.map(({ term }) => termName(term)).join(", "),
      message: "columns of Darwin Core that an atlas makes no use of",
      wayOut: "nothing to do",
    });
  return said.map((remark) => remarkFinding(file.name, remark));
}

/** Described columns that fill no field and are no term of Darwin Core that is known and left alone. */
function unknownTerms({ fields: { unused } }: LoadedFile): FieldDescription[] {
  return unused.filter((field) => mapColumns([field.term], {}).unused.length === 0 && !isLink(field));
}

function isLink({ term }: FieldDescription): boolean {
  return LINKS.some((link) => link === termName(term));
}

/** The columns of a file that fill no field, with some of their values, so that a mapping can be proposed. */
export function unmappedTerms(file: LoadedFile): UnmappedColumn[] {
  const described = new Set([...file.fields.fields.values()].map(({ index }) => index));
  const names = Array.from({ length: file.look.width }, (_, column) => {
    const unknown = unknownTerms(file).find(({ index }) => index === column);
    const named = unknown === undefined ? undefined : termName(unknown.term);
    return named ?? (described.has(column) || column === file.id ? "" : (file.look.header[column] ?? ""));
  });
  return unmappedColumns(names, mapColumns(names, {}), file.look.rows);
}

/** The licence that records without one were given. */
export function licenceFinding(name: string, licence: string): FileFinding {
  return remarkFinding(name, {
    check: "archive_licence",
    severity: "note",
    value: licence,
    message: "records that state no licence have that of the archive's metadata",
    wayOut: "set licence for the source if it is another",
  });
}
