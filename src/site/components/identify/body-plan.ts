import { BEE } from "./bee-plan.ts";

/** One row of a body plan: a part of the body, and the point of the drawing its leader starts from. */
export interface PlanRow {
  /** Part id as in `characters.csv`, for example "hind-leg". */
  readonly id: string;
  readonly label: string;
  /** In units of the drawing; undefined for a part without a leader. */
  readonly ring?: readonly [x: number, y: number];
}

/** A drawn body: its rows in their fixed order, and the shapes of its parts as SVG without colour. */
export interface BodyPlan {
  readonly id: string;
  /** What the body is seen from, for the title of the drawing: "seen from above". */
  readonly view: string;
  readonly rows: readonly PlanRow[];
  /** SVG shapes, each with an id, for one hidden `<defs>` a page. */
  readonly shapes: string;
  /** Parts of the whole figure from back to front: id of the shape, and the row that colours it or a fixed class. */
  readonly figure: readonly PlanShape[];
  /** Parts of the small body, without wings; the legs only where their colour decides. */
  readonly mini: readonly PlanShape[];
  /** Height of the drawing in its own units; the figure is scaled so that its rows fit. */
  readonly height: number;
  /** View box of the small body. */
  readonly miniBox: string;
}

/** One shape of a figure: coloured by a row of the plan, or by a class of its own. */
export interface PlanShape {
  readonly shape: string;
  readonly row?: string;
  readonly className?: string;
  /** Castes for which it is drawn; all where absent. */
  readonly castes?: readonly string[];
  readonly exceptCastes?: readonly string[];
}

const PLANS: readonly BodyPlan[] = [BEE];

/**
 * The body plan a scheme names in its settings.
 *
 * @param id "bee", or empty for a scheme without one
 * @returns undefined for a scheme without a body plan
 * @example bodyPlan("bee")?.rows.length // 12
 */
export function bodyPlan(id: string): BodyPlan | undefined {
  return PLANS.find((plan) => plan.id === id);
}
