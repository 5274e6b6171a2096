import type { WantedSquare } from "../../../publishing/contracts.ts";
import type { NumberClass } from "../../maps/number-map.ts";
import { say } from "../../words/say.ts";
import { oneDecimal } from "../text/numbers.ts";

/** Value of a square of which nothing can be said. */
export const UNKNOWN = -1;
const SIDES = [0.9, 1.6, 2.3, 2.95, 3.5];

/** Steps between the classes, in species: whole ones where squares gain several, halves and fifths where they gain less. */
function stepOf(most: number): number {
  return [0.2, 0.5, 1, 2, 5].find((step) => step * (SIDES.length + 1) >= most) ?? Math.ceil(most / SIDES.length);
}

/**
 * Classes of a map of what squares could gain: nothing can be said, then up to five equal steps of a round size.
 *
 * @param squares ranked ones; at least one
 * @returns classes in thousandths of a taxon, each with its words; steps that no square reaches are left out
 * @example gainClasses([{ gain: 4700 }]).map(({ words }) => words) // ["Nothing can be said", "under 1 species", "1 to 2", …, "4 or more"]
 */
export function gainClasses(squares: readonly Pick<WantedSquare, "gain">[]): (NumberClass & { words: string })[] {
  const most = Math.max(0, ...squares.map(({ gain }) => gain)) / 1000;
  const step = stepOf(most);
  const count = Math.max(1, Math.min(SIDES.length, Math.ceil(most / step)));
  const said = (number: number) => (Number.isInteger(step) ? String(number) : oneDecimal(number));
  const steps = SIDES.slice(SIDES.length - count).map((side, index) => {
    const [from, to] = [index * step, (index + 1) * step];
    const last = index === count - 1;
    return {
      least: Math.round(from * 1000),
      most: last ? Number.POSITIVE_INFINITY : Math.round(to * 1000) - 1,
      side,
      words:
        index === 0
          ? say("wanted.map-under", { most: said(to) })
          : last
            ? say("wanted.map-from", { least: said(from) })
            : say("wanted.map-span", { least: said(from), most: said(to) }),
    };
  });
  return [{ least: UNKNOWN, most: UNKNOWN, side: 0, words: say("wanted.map-none") }, ...steps];
}
