import type { Scheme } from "../../scheme/scheme.ts";
import { comparedPeriods } from "../../scheme/settings-agree.ts";

/**
 * The pairs of periods change is told between, by number: the compared pair first, then each period with the one after it.
 *
 * @returns none in an atlas of one period
 * @example pairsOfPeriods(scheme) // three periods, first and last compared: [[0, 2], [0, 1], [1, 2]]
 */
export function pairsOfPeriods({ settings }: Pick<Scheme, "settings">): [from: number, to: number][] {
  const compared = comparedPeriods(settings);
  if (compared === null) return [];
  const next = settings.periods.slice(1).map((_, index): [number, number] => [index, index + 1]);
  return [compared, ...next.filter(([from, to]) => from !== compared[0] || to !== compared[1])];
}
