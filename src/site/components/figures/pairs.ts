import type { AtlasFile, Period, TrendRow } from "../../../publishing/contracts.ts";

/** Two periods between which change is told. */
export interface Pair {
  readonly from: string;
  readonly to: string;
  readonly fromLabel: string;
  readonly toLabel: string;
}

/**
 * The pairs of periods that have trends: that of the maps first, then by time.
 *
 * @returns nothing in an atlas of one period
 * @example pairsOf(trends, periods, ["p1", "p2"])[0]?.fromLabel // "1990–2005"
 */
export function pairsOf(
  trends: readonly Pick<TrendRow, "from_period" | "to_period">[],
  periods: readonly Period[],
  compared: AtlasFile["compared"],
): Pair[] {
  if (compared === null) return [];
  const keys = new Set(trends.map(({ from_period, to_period }) => `${from_period}\n${to_period}`));
  const place = (id: string) => periods.findIndex((period) => period.id === id);
  const label = (id: string) => periods[place(id)]?.label ?? id;
  const isMapped = ([from, to]: readonly string[]) => from === compared[0] && to === compared[1];
  return [...keys]
    .map((key) => key.split("\n") as [string, string])
    .sort((a, b) => Number(isMapped(b)) - Number(isMapped(a)) || place(a[0]) - place(b[0]) || place(a[1]) - place(b[1]))
    .map(([from, to]) => ({ from, to, fromLabel: label(from), toLabel: label(to) }));
}
