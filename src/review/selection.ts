import { sqlText } from "../engine/database.ts";
import { Mistake } from "../mistake.ts";
import { isNameRefusal } from "../names/match-name.ts";
import { partyKey } from "../records/party-key.ts";
import type { Scheme } from "../scheme/scheme.ts";

/** Which part of the worklist: what is left out is not asked about. */
export interface Selection {
  /** A name of the checklist. */
  taxon?: string | undefined;
  /** A territory's id, or a region as the records state it. */
  region?: string | undefined;
  /** A recorder's name or a party's, in any spelling and order. */
  recorder?: string | undefined;
  check?: string | undefined;
  source?: string | undefined;
}

/**
 * The condition of a selection on the columns of the table `worklist`, which stands as `w`. A taxon stands for all
 * that are within it.
 *
 * @throws {Mistake} where the taxon is not in the checklist, or the source is none
 * @example selectionCondition({ source: "walks" }, scheme) // => "w.source = 'walks'"
 */
export function selectionCondition(selection: Selection, { checklist, settings }: Scheme): string {
  const { taxon, region, recorder, check, source } = selection;
  const conditions: string[] = [];
  if (taxon !== undefined) {
    const match = checklist.match(taxon);
    if (isNameRefusal(match)) throw new Mistake("--taxon", `is ${taxon}: ${match.refused}`, match.wayOut);
    const all = [match.taxonId, ...checklist.descendants(match.taxonId)];
    conditions.push(`w.taxon_id IN (${all.map(sqlText).join(", ")})`);
  }
  if (region !== undefined)
    conditions.push(`list_contains(string_split(lower(w.regions), ' | '), ${sqlText(region.trim().toLowerCase())})`);
  if (recorder !== undefined) conditions.push(`w.recorder = ${sqlText(partyKey(recorder))}`);
  if (check !== undefined) conditions.push(`w.check_name = ${sqlText(check)}`);
  if (source !== undefined) {
    if (!settings.sources.some(({ id }) => id === source))
      throw new Mistake("--source", `is ${source}`, `name one of ${settings.sources.map(({ id }) => id).join(", ")}`);
    conditions.push(`w.source = ${sqlText(source)}`);
  }
  return conditions.length === 0 ? "true" : conditions.join(" AND ");
}

/** A selection in words, for a title and for the filter of a bulk ruling. */
export function selectionInWords({ taxon, region, recorder, check, source }: Selection): string {
  const parts = [
    taxon,
    region && `in ${region}`,
    recorder && `by ${recorder}`,
    check && `with ${check.replaceAll("_", " ")}`,
    source && `of ${source}`,
  ].filter(Boolean);
  return parts.length === 0 ? "all records" : parts.join(", ");
}
