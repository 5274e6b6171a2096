import { sqlText } from "../../engine/database.ts";
import { Mistake } from "../../mistake.ts";
import { findingTitle } from "../../records/finding-titles.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { selectionCondition, selectionInWords } from "../selection.ts";
import type { DeskFilter } from "./answers.ts";

/** A filter that leaves nothing out. */
export const NO_FILTER: DeskFilter = Object.freeze({
  check: "",
  severity: "",
  source: "",
  taxon: "",
  region: "",
  recorder: "",
  from: "",
  to: "",
  text: "",
  show: "",
});

/** Columns a free text is looked for in. */
const SEARCHED = [
  "said_name",
  "said_date",
  "said_place",
  "locality",
  "remarks",
  "recorded_by",
  "record_key",
  "message",
];

/**
 * The condition of a filter on the table `worklist`, which stands as `w`, joined to `desk_ruled`, which stands as `d`.
 *
 * @throws {Mistake} where the taxon is not in the checklist, or a year is none
 * @example narrowed({ ...NO_FILTER, source: "walks" }, scheme) // => "w.source = 'walks'"
 */
export function narrowed(filter: DeskFilter, scheme: Scheme): string {
  const { severity, text, show } = filter;
  const parts = [selectionCondition(selectionOf(filter, scheme), scheme)];
  if (severity !== "") parts.push(`w.severity = ${sqlText(severity)}`);
  for (const [year, sign] of [
    [filter.from, ">="],
    [filter.to, "<="],
  ] as const)
    if (year !== "") parts.push(`w.first_year ${sign} ${yearOf(year)}`);
  if (text.trim() !== "")
    parts.push(
      `contains(lower(concat_ws(' ', ${SEARCHED.map((name) => `w.${name}`).join(", ")})), lower(${sqlText(text.trim())}))`,
    );
  if (show === "open") parts.push("d.ruling IS NULL");
  return parts.filter((part) => part !== "true").join(" AND ") || "true";
}

/** A filter in words, as a bulk ruling keeps it. */
export function narrowedInWords(filter: DeskFilter, scheme: Scheme): string {
  const { severity, from, to, text } = filter;
  const { check, ...selection } = selectionOf(filter, scheme);
  const selected = selectionInWords(selection);
  const parts = [
    check !== undefined && `“${findingTitle(check)}”`,
    severity && `that ${severity === "blocks" ? "hold a record" : "ask"}`,
    selected === "all records" ? "" : selected,
    from !== "" || to !== "" ? `of ${from || "the beginning"} to ${to || "now"}` : "",
    text.trim() !== "" && `with “${text.trim()}”`,
  ].filter(Boolean);
  return parts.length === 0 ? "the whole list" : parts.join(", ");
}

function selectionOf({ taxon, region, recorder, check, source }: DeskFilter, { checklist }: Scheme) {
  return {
    ...(taxon === "" ? {} : { taxon: checklist.taxa.get(taxon)?.scientificName ?? taxon }),
    ...(region === "" ? {} : { region }),
    ...(recorder === "" ? {} : { recorder }),
    ...(check === "" ? {} : { check }),
    ...(source === "" ? {} : { source }),
  };
}

function yearOf(text: string): number {
  const year = Number(text);
  if (!Number.isInteger(year) || year < 0 || year > 9999)
    throw new Mistake("a year", `is ${text}`, "write four figures, such as 2011");
  return year;
}
