import type { Key } from "../../words/catalogue.ts";
import { BEE } from "./bee-plan.ts";
import { DAMSELFLY } from "./damselfly-plan.ts";
import { HOVERFLY } from "./hoverfly-plan.ts";
import type { Mark } from "./part-state.ts";

/** One row of a body plan: a part of the body, and the point of the drawing its leader starts from. */
export interface PlanRow {
  /** Part id as in `characters.csv`, for example "hind-leg". */
  readonly id: string;
  /** In units of the drawing; undefined for a part without a leader. */
  readonly ring?: readonly [x: number, y: number];
}

/** A drawn body: its rows in their fixed order, and the shapes of its parts as SVG without colour. */
export interface BodyPlan {
  readonly id: string;
  /** What the body is seen from, for the title of the drawing. */
  readonly view: Key;
  readonly rows: readonly PlanRow[];
  /** SVG shapes, each with an id that begins with the plan's, for one hidden `<defs>` a page. */
  readonly shapes: string;
  /** Marks its parts can bear. */
  readonly marks: readonly Mark[];
  /** Parts of the whole figure from back to front. */
  readonly figure: readonly PlanShape[];
  /** Parts of the small body, without wings; the legs only where their colour decides. */
  readonly mini: readonly PlanShape[];
  /** Height of the drawing in its own units; the figure is scaled so that its rows fit. */
  readonly height: number;
  /** Width of the figure, in units of which a row has 24, and where its middle line stands. */
  readonly width: number;
  readonly axis: number;
  /** Share of the figure's height at which the drawing's own zero stands. */
  readonly zero: number;
  /** View box of the small body. */
  readonly miniBox: string;
  /** Whether each cell of a numbered segment shows it drawn, as long bodies need. */
  readonly segments: boolean;
}

/** One shape of a figure: coloured by a row of the plan, or by a class of its own. */
export interface PlanShape {
  readonly shape: string;
  readonly row?: string;
  readonly className?: string;
  /** Castes for which it is drawn; all where absent. */
  readonly castes?: readonly string[];
  readonly exceptCastes?: readonly string[];
  /** A dark mark: drawn only where the row's state names it. */
  readonly mark?: Mark;
  /** Id of a clip that leaves of the shape what is marked. */
  readonly clip?: string;
  /** Drawn only where the row is in one of these states; where it is in none of any such shape, those with "" are. */
  readonly states?: readonly string[];
  readonly transform?: string;
}

const PLANS: readonly BodyPlan[] = [BEE, HOVERFLY, DAMSELFLY];

/** Ids of all plans, in no order that means anything. @example planIds() // ["bee", "hoverfly", "damselfly"] */
export function planIds(): string[] {
  return PLANS.map(({ id }) => id);
}

/**
 * The body plan a scheme names in its settings, or a taxon outside the group has.
 *
 * @param id "bee", "hoverfly", "damselfly", or empty for a scheme without one
 * @returns undefined for a scheme without a body plan
 * @example bodyPlan("bee")?.rows.length // 14
 */
export function bodyPlan(id: string): BodyPlan | undefined {
  return PLANS.find((plan) => plan.id === id);
}

/**
 * Rows of several plans laid together, so that different bodies can stand side by side: those of the first plan, and
 * each row it lacks behind the row that precedes it in its own.
 *
 * @example rowsOfPlans([bee, hoverfly]).length // 14
 */
export function rowsOfPlans(plans: readonly BodyPlan[]): PlanRow[] {
  const [first, ...others] = plans;
  const rows = [...(first?.rows ?? [])];
  for (const { rows: more } of others) {
    let at = 0;
    for (const row of more) {
      const found = rows.findIndex(({ id }) => id === row.id);
      if (found >= 0) at = found + 1;
      else rows.splice(at++, 0, { id: row.id });
    }
  }
  return rows;
}
