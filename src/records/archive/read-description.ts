import type { QualifiedTag } from "sax";
import type { ArchiveDescription, FieldDescription, TableDescription } from "./description.ts";
import { parseXml } from "./parse-xml.ts";

const TEXT_GUIDE = "http://rs.tdwg.org/dwc/text/";

/**
 * Reads an archive's description, by the Darwin Core text guide (TDWG 2023) and its schema. Defaults are those of the
 * guide. Faults that leave a sense are told; the rest is as if it were not there.
 *
 * @throws {Error} where the text is no well-formed XML, holds a document type, or is no such description
 * @example readDescription('<archive xmlns="http://rs.tdwg.org/dwc/text/">…</archive>').core?.rowType // => "http://rs.tdwg.org/dwc/terms/Occurrence"
 */
export function readDescription(text: string): ArchiveDescription {
  const description: ArchiveDescription = { metadata: "", core: undefined, extensions: [], faults: [] };
  let root: string | undefined;
  let table: TableDescription | undefined;
  parseXml(text, {
    open(tag) {
      if (root === undefined) {
        root = rootNamespace(tag);
        description.metadata = attribute(tag, "metadata") ?? "";
      } else if (tag.uri !== root) return;
      else if (tag.local === "core" || tag.local === "extension") {
        table = readTable(tag, description.faults);
        if (tag.local === "extension") description.extensions.push(table);
        else if (description.core === undefined) description.core = table;
        else description.faults.push("there is more than one core; the first counts");
      } else if (table !== undefined) readColumn(tag, table, description.faults);
    },
    close(tag, content) {
      if (tag.local === "location" && tag.uri === root && content.trim() !== "") table?.locations.push(content.trim());
      if (tag.local === "core" || tag.local === "extension") table = undefined;
    },
  });
  if (root === undefined) throw new Error("it is empty");
  if (description.core === undefined) description.faults.push("there is no core");
  return description;
}

function rootNamespace(tag: QualifiedTag): string {
  if (tag.local !== "archive" || (tag.uri !== TEXT_GUIDE && tag.uri !== ""))
    throw new Error(`its first element is ${tag.name}, not an archive of the text guide`);
  return tag.uri;
}

function readTable(tag: QualifiedTag, faults: string[]): TableDescription {
  const given = (name: string, otherwise: string) => unescaped(attribute(tag, name) ?? otherwise);
  const lines = given("ignoreHeaderLines", "0");
  const headers = wholeNumber(lines);
  if (headers === undefined) faults.push(`ignoreHeaderLines is “${lines}”, taken as 0`);
  const rowType = given("rowType", "").trim();
  if (rowType === "") faults.push(`${tag.local} states no rowType`);
  return {
    rowType,
    locations: [],
    encoding: given("encoding", "UTF-8").trim(),
    fieldsTerminatedBy: given("fieldsTerminatedBy", ","),
    linesTerminatedBy: given("linesTerminatedBy", "\n"),
    fieldsEnclosedBy: given("fieldsEnclosedBy", '"'),
    ignoreHeaderLines: headers ?? 0,
    dateFormat: given("dateFormat", "").trim(),
    id: undefined,
    fields: [],
  };
}

function readColumn(tag: QualifiedTag, table: TableDescription, faults: string[]): void {
  const stated = attribute(tag, "index");
  const index = stated === undefined ? undefined : wholeNumber(stated);
  const term = (attribute(tag, "term") ?? "").trim();
  if (stated !== undefined && index === undefined)
    faults.push(`index “${stated}” of ${term || tag.local} is no column`);
  // Earlier editions of the guide write coreId.
  if (["id", "coreid"].includes(tag.local.toLowerCase())) table.id = index;
  if (tag.local !== "field") return;
  const field: FieldDescription = { term, index, default: attribute(tag, "default") ?? "" };
  if (term === "") faults.push("a field states no term");
  else table.fields.push(field);
}

function attribute(tag: QualifiedTag, name: string): string | undefined {
  return tag.attributes[name]?.value;
}

function wholeNumber(text: string): number | undefined {
  return /^\s*\d{1,9}\s*$/.test(text) ? Number(text) : undefined;
}

const ESCAPES: Readonly<Record<string, string>> = { t: "\t", n: "\n", r: "\r" };

/** A value whose special characters are written out, as \t for a tab. */
function unescaped(text: string): string {
  return text.replaceAll(/\\(.)/g, (_, character: string) => ESCAPES[character] ?? character);
}
