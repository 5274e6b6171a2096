import type { PlanShape } from "./body-plan.ts";
import type { RibbonColumn } from "./ribbon.ts";

/** Pile of which the whole head has the face's colour; else only its front has. */
const WHOLE_HEAD = new Set(["black", "ginger", "brown", "orange"]);

/**
 * The class that colours one shape of a body, or undefined where the shape is not drawn.
 *
 * @param shape of a body plan
 * @param column states of one caste or form
 * @param mini the small body, whose legs are drawn only where they have a colour of their own
 * @example shapeClass({ shape: "bee-T4", row: "T4" }, column, false) // "pile-red"
 */
export function shapeClass(
  { row, className, castes, exceptCastes }: PlanShape,
  column: RibbonColumn,
  mini: boolean,
): string | undefined {
  const caste = column.castes[0] ?? "";
  if ((castes !== undefined && !castes.includes(caste)) || (exceptCastes?.includes(caste) ?? false)) return undefined;
  if (row === undefined) return className;
  const state = column.states.get(row);
  const pile = state?.piles[0];
  if (className === "head")
    return pile !== undefined && WHOLE_HEAD.has(pile)
      ? `pile-${pile}`
      : pile === undefined
        ? "pile-unknown"
        : "pile-black";
  if (row === "wings") return pile === "smoky" ? "wing-smoky" : "wing-clear";
  if (row === "hind-leg") {
    if (state?.absent ?? false) return mini ? undefined : "pile-bare";
    return mini && (pile === undefined || pile === "black") ? undefined : `pile-${pile ?? "unknown"}`;
  }
  return `pile-${pile ?? "unknown"}`;
}
