import { type BodyPlan, bodyPlan } from "../identify/body-plan.ts";
import type { IdentifyTaxon } from "../identify/identify-taxa.ts";
import { placeFigure } from "../identify/leaders.ts";
import type { PartState } from "../identify/part-state.ts";
import { drawnShapes } from "../identify/shape-class.ts";
import { told } from "./described.ts";

type Drawn = Pick<IdentifyTaxon, "characters" | "plan">;

/** Units of one row of a figure, of which a plan gives its width. */
const ROW = 24;
/** What stands above the foremost ring of a plan, antennae and legs, and below the hindmost, as shares of its height. */
const ABOVE = 0.2;
const BELOW = 0.12;

/**
 * The small body of a taxon in one caste and form, as SVG that uses the shapes of its plan.
 *
 * @returns empty where it has no drawn body
 * @example miniBody(redTailed, "queen", "").startsWith("<svg") // true
 */
export function miniBody(taxon: Drawn, caste: string, form: string): string {
  const plan = bodyPlan(taxon.plan);
  const uses = plan === undefined ? "" : usesOf(plan, taxon, { caste, form, mini: true });
  return plan === undefined || uses === ""
    ? ""
    : `<svg class="mini body" viewBox="${plan.miniBox}" aria-hidden="true">${uses}</svg>`;
}

/**
 * The whole body, with wing and legs, without leaders.
 *
 * @param says what it shows, for who does not see it; as text
 * @example wholeBody(redTailed, "queen", "", "A bee seen from above").includes('role="img"') // true
 */
export function wholeBody(taxon: Drawn, caste: string, form: string, says: string): string {
  const plan = bodyPlan(taxon.plan);
  if (plan === undefined) return "";
  const unit = plan.height / (plan.rows.length * ROW);
  const heights = plan.rows.flatMap(({ ring }) => (ring === undefined ? [] : [ring[1]]));
  const [top, end] = [Math.min(...heights) - plan.height * ABOVE, Math.max(...heights) + plan.height * BELOW];
  const box = [-plan.axis * unit, top, plan.width * unit, end - top].map(Math.round).join(" ");
  const uses = usesOf(plan, taxon, { caste, form, mini: false });
  return `<svg class="whole body" viewBox="${box}" role="img" aria-label="${says}">${uses}</svg>`;
}

/**
 * The whole body with a leader from each part to its row of the table beside it. It shows what the table says, and is
 * hidden from who hears the page.
 *
 * @param rows ids of the rows of the table that stand beside the figure, in their order
 * @returns empty where the taxon has no drawn body
 */
export function leaderFigure(taxon: Drawn, caste: string, form: string, rows: readonly string[]): string {
  const plan = bodyPlan(taxon.plan);
  if (plan === undefined || rows.length === 0) return "";
  const shown = rows.map((part) => plan.rows.find(({ id }) => id === part) ?? { id: part });
  const { height, transform, path, rings } = placeFigure(shown, plan);
  const circles = rings.map(([x, y]) => `<circle cx="${x}" cy="${y}" r="1.9"/>`).join("");
  return `<svg class="figure" viewBox="0 0 ${plan.width} ${height}" aria-hidden="true"><g class="body" transform="${transform}">${usesOf(plan, taxon, { caste, form, mini: false })}</g><g class="leaders"><path d="${path}"/>${circles}</g></svg>`;
}

function usesOf(
  plan: BodyPlan,
  taxon: Drawn,
  { caste, form, mini }: { caste: string; form: string; mini: boolean },
): string {
  const states = new Map<string, PartState>();
  for (const { id } of plan.rows) {
    const said = told(taxon, id, caste, form);
    if (said !== undefined) states.set(id, said.state);
  }
  if (states.size === 0) return "";
  const column = { label: "", castes: caste === "" ? [] : [caste], form, states };
  return drawnShapes(mini ? plan.mini : plan.figure, column, mini)
    .map(({ href, className, clip, transform }) => {
      const more = `${clip === undefined ? "" : ` clip-path="${clip}"`}${transform === undefined ? "" : ` transform="${transform}"`}`;
      return `<use href="${href}" class="${className}"${more}/>`;
    })
    .join("");
}
