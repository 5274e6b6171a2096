import type { IdentifyTaxon } from "../identify/identify-taxa.ts";
import type { Column, Row } from "./comparison.ts";
import { relation, type Told, valuesOf } from "./described.ts";

/** What parts two columns of a comparison. */
export interface Verdict {
  readonly one: IdentifyTaxon;
  readonly other: IdentifyTaxon;
  /** Parts that differ and settle it, in the order of the rows. */
  readonly settling: readonly string[];
  /** Parts that differ and help. */
  readonly supporting: readonly string[];
  /** Parts that differ, and lead astray. */
  readonly misleading: readonly string[];
  /** The smallest aggregate that holds both, where there is one: what to record where nothing settles it. */
  readonly aggregate: IdentifyTaxon | undefined;
  /** One is part of the other, which is then the aggregate. */
  readonly nested: boolean;
}

/**
 * Judges what parts two columns. A part settles it where the two differ outright, the table of characters says of one
 * of them that it settles, and of neither that it misleads.
 *
 * @param rows of the comparison, whose cells stand in the order of `columns`
 * @param all every taxon, to name aggregates by
 */
export function verdictOn(
  one: Column,
  other: Column,
  rows: readonly Row[],
  columns: readonly Column[],
  all: readonly IdentifyTaxon[],
): Verdict {
  const [first, second] = [columns.indexOf(one), columns.indexOf(other)];
  const parts: Record<"settles" | "supports" | "misleads", string[]> = { settles: [], supports: [], misleads: [] };
  for (const { part, cells } of rows) {
    const [mine, its] = [cells[first]?.told, cells[second]?.told];
    if (mine === undefined || its === undefined) continue;
    if (relation(valuesOf(mine.state), valuesOf(its.state)) !== "differ") continue;
    parts[worthOf(mine, its)].push(part);
  }
  const aggregate = sharedAggregate(one.taxon, other.taxon, all);
  return {
    one: one.taxon,
    other: other.taxon,
    settling: parts.settles,
    supporting: parts.supports,
    misleading: parts.misleads,
    aggregate,
    nested: aggregate === one.taxon || aggregate === other.taxon,
  };
}

/** Of what worth a difference is: what misleads in either misleads. */
export function worthOf(one: Told, other: Told): "settles" | "supports" | "misleads" {
  const kinds = [...one.rows, ...other.rows].map(({ reliability }) => reliability);
  if (kinds.includes("misleads")) return "misleads";
  return kinds.includes("settles") ? "settles" : "supports";
}

/**
 * The nearest aggregate that holds both taxa; one of the two where it holds the other.
 *
 * @example sharedAggregate(buffTailed, whiteTailed, all)?.short // "Buff/white-tailed group"
 */
export function sharedAggregate(
  one: IdentifyTaxon,
  other: IdentifyTaxon,
  all: readonly IdentifyTaxon[],
): IdentifyTaxon | undefined {
  const mine = upwards(one, all);
  const its = new Set(upwards(other, all));
  const slug = mine.find((each) => its.has(each));
  return slug === undefined ? undefined : all.find((taxon) => taxon.slug === slug);
}

/** A taxon and the aggregates above it, nearest first. */
export function upwards(taxon: IdentifyTaxon, all: readonly IdentifyTaxon[]): string[] {
  const found = [taxon.slug];
  for (const slug of found) {
    const above = slug === taxon.slug ? taxon : all.find((each) => each.slug === slug);
    for (const next of above?.within ?? []) if (!found.includes(next)) found.push(next);
  }
  return found;
}
