/** What a record says of taxa, squares and visits, worked out one record at a time. */
import type { RecordRow, Rules } from "./judged-records.ts";

export type Row = Record<string, unknown>;

export const RESOLUTIONS = [10_000, 2_000] as const;

/** A taxon and everything above it. */
export function upwards(taxon: string, { within }: Rules): Set<string> {
  const all = new Set([taxon]);
  for (const one of all) for (const above of within[one] ?? []) all.add(above);
  return all;
}

/** A taxon, everything above it and everything below it. */
export function lineage(taxon: string, rules: Rules): Set<string> {
  const below = Object.keys(rules.within).filter((other) => upwards(other, rules).has(taxon));
  return new Set([...upwards(taxon, rules), ...below]);
}

export function squareOf(record: RecordRow, resolution: number): string | null {
  const code = resolution === 10_000 ? record.hectad : record.tetrad;
  return code === null ? null : `${record.grid} ${code}`;
}

/** One place, one day, one recorder or party; null for a date of several days. */
export function visitOf(record: RecordRow): string | null {
  if (record.first_day === null || record.first_day !== record.last_day || record.visit_place === "") return null;
  return [record.visit_place, record.first_day, record.recorder].join("|");
}

export function distinct<T>(values: readonly (T | null)[]): number {
  return new Set(values.filter((value) => value !== null)).size;
}

export function group(
  records: readonly RecordRow[],
  key: (record: RecordRow) => string | null,
): Map<string, RecordRow[]> {
  const groups = new Map<string, RecordRow[]>();
  for (const record of records) {
    const name = key(record);
    if (name !== null) groups.set(name, [...(groups.get(name) ?? []), record]);
  }
  return groups;
}
