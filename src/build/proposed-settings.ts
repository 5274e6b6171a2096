import { isDateRefusal } from "../dates/interval.ts";
import { readDate } from "../dates/read-date.ts";
import { isRefusal } from "../grids/grid.ts";
import { gridNamed } from "../grids/index.ts";
import { readReference } from "../grids/reference.ts";
import { isNameRefusal } from "../names/match-name.ts";
import { type ProposedColumn, proposeColumns, type ValueJudge } from "../records/propose-columns.ts";
import type { ReadFile } from "../records/raw-records.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { RecordField, SourceSetting } from "../scheme/settings.ts";

/**
 * What to paste into `sources` of atlas.yaml so that columns no field was found for are used, as YAML with the reasons as
 * comments; empty where there is nothing to propose. Columns the settings name already stand in it, for a person replaces
 * the block.
 *
 * @example proposedSettings(scheme, files) // => '  - id: walks\n    columns:\n      scientificName: Art  # 2 of 2 values are names of the checklist\n'
 */
export function proposedSettings(scheme: Scheme, files: readonly ReadFile[]): string {
  const judge = judgeOf(scheme);
  return scheme.settings.sources
    .map((source) => {
      const own = files.filter((file) => file.source.id === source.id);
      const proposed: ProposedColumn[] = [];
      for (const { result } of own) {
        const known = new Set<RecordField>([
          ...result.fields,
          ...(Object.keys({ ...source.columns, ...source.constants }) as RecordField[]),
          ...proposed.map(({ field }) => field),
        ]);
        proposed.push(...proposeColumns(result.unmapped, known, judge));
      }
      return proposed.length === 0 ? "" : blockOf(source, proposed);
    })
    .join("");
}

function blockOf({ id, columns, date_format }: SourceSetting, proposed: readonly ProposedColumn[]): string {
  const lines = [`  - id: ${id}`, "    columns:"];
  for (const [field, header] of Object.entries(columns)) lines.push(`      ${field}: ${quoted(header)}`);
  for (const { field, header, why } of proposed) lines.push(`      ${field}: ${quoted(header)}  # ${why}`);
  const dateFormat = proposed.find((one) => one.dateFormat !== undefined)?.dateFormat;
  if (dateFormat !== undefined && dateFormat !== date_format)
    lines.push(`    date_format: ${dateFormat}  # no other reads these dates`);
  return `${lines.join("\n")}\n`;
}

/** A header as YAML: a JSON text is one. */
function quoted(header: string): string {
  return /^\p{L}[\p{L}\p{N}]*(?: [\p{L}\p{N}]+)*$/u.test(header) && !/^(?:true|false|null)$/i.test(header)
    ? header
    : JSON.stringify(header);
}

function judgeOf({ checklist, settings }: Scheme): ValueJudge {
  const grids = [...new Set(settings.territories.map(({ grid }) => grid))].map((grid) => gridNamed(grid));
  const intervalEnd = settings.dates.interval_end;
  return {
    isName(text) {
      const match = checklist.match(text);
      return !isNameRefusal(match) && match.matchedAs !== "vernacular";
    },
    isReference: (text) => !isRefusal(readReference(text, grids)),
    isDate: (eventDate, format) => !isDateRefusal(readDate({ eventDate }, { format, intervalEnd, twoDigitPivot: 30 })),
  };
}
