import type { PlanShape } from "./body-plan.ts";
import type { PartState } from "./part-state.ts";
import type { RibbonColumn } from "./ribbon.ts";

/** Pile of which the whole head has the face's colour; else only its front has. */
const WHOLE_HEAD = new Set(["black", "ginger", "brown", "orange"]);

/** A shape as it is drawn: what it is a copy of, its class, and how it is placed or cut. */
export interface DrawnShape {
  readonly href: string;
  readonly className: string;
  readonly clip: string | undefined;
  readonly transform: string | undefined;
}

/**
 * The shapes of a body in one caste or form, from back to front.
 *
 * @param shapes of a plan: its figure or its small body
 * @param column states of one caste or form
 * @param mini the small body, whose legs are drawn only where they have a colour of their own
 * @example drawnShapes(plan.mini, column, true)[0] // { href: "#bee-T6", className: "pile-red", clip: undefined, transform: undefined }
 */
export function drawnShapes(shapes: readonly PlanShape[], column: RibbonColumn, mini: boolean): DrawnShape[] {
  return shapes.flatMap((shape) => {
    const className = shapeClass(shape, column, mini);
    return className === undefined
      ? []
      : [
          {
            href: `#${shape.shape}`,
            className,
            clip: shape.clip === undefined ? undefined : `url(#${shape.clip})`,
            transform: shape.transform,
          },
        ];
  });
}

/**
 * The class that colours one shape of a body, or undefined where the shape is not drawn.
 *
 * @example shapeClass({ shape: "bee-T4", row: "T4" }, column, false) // "pile-red"
 */
export function shapeClass(shape: PlanShape, column: RibbonColumn, mini: boolean): string | undefined {
  const { row, className, castes, exceptCastes, mark, states } = shape;
  const caste = column.castes[0] ?? "";
  if ((castes !== undefined && !castes.includes(caste)) || (exceptCastes?.includes(caste) ?? false)) return undefined;
  if (row === undefined) return className;
  const state = column.states.get(row);
  if (mark !== undefined) return state?.mark === mark ? "pile-black mark" : undefined;
  if (states !== undefined && !isIn(states, state)) return undefined;
  return rowClass(row, className, state, mini);
}

/** The usual shape of a row has the state "" among its own: it is drawn wherever no other is. */
function isIn(states: readonly string[], state: PartState | undefined): boolean {
  const words = state?.words.split(" ") ?? [];
  return words.some((word) => states.includes(word)) || (states.includes("") && !words.includes("apart"));
}

function rowClass(
  row: string,
  className: string | undefined,
  state: PartState | undefined,
  mini: boolean,
): string | undefined {
  const pile = state?.piles[0];
  if (className === "head") {
    if (pile === undefined) return "pile-unknown";
    return WHOLE_HEAD.has(pile) ? `pile-${pile}` : "pile-black";
  }
  if (className === "eyes") return pile === undefined ? "eye" : `pile-${pile}`;
  if (row === "wings") return pile === "smoky" ? "wing-smoky" : "wing-clear";
  if (row === "hind-leg") {
    if (state?.absent ?? false) return mini ? undefined : "pile-bare";
    return mini && (pile === undefined || pile === "black") ? undefined : `pile-${pile ?? "unknown"}`;
  }
  return `pile-${pile ?? "unknown"}`;
}
