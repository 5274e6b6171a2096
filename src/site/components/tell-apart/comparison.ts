import { bodyPlan, rowsOfPlans } from "../identify/body-plan.ts";
import type { IdentifyTaxon } from "../identify/identify-taxa.ts";
import { type Told, told, valuesOf } from "./described.ts";
import { likestForm } from "./likest-form.ts";
import { type Verdict, verdictOn } from "./verdict.ts";
import type { View } from "./views.ts";

/** One cell of a comparison: what is said of a part of one taxon. */
export interface Cell {
  readonly told: Told | undefined;
  /** Whether it is the value of fewer columns than another, or not of the first where as many have either. */
  readonly unlike: boolean;
}

/** One row of a comparison: a part of the body, or something else that is looked at. */
export interface Row {
  readonly part: string;
  /** Whether the part is one of the drawn body, and its cells take colour. */
  readonly drawn: boolean;
  /** In the order of the columns. */
  readonly cells: readonly Cell[];
  /** Whether all that is described is the same. */
  readonly agrees: boolean;
  /** Whether it settles one pair of the columns at least. */
  readonly settles: boolean;
}

/** One taxon in a comparison. */
export interface Column {
  readonly taxon: IdentifyTaxon;
  readonly castes: readonly string[];
  /** The form that is shown; empty for the usual one. */
  readonly form: string;
}

/** A comparison of two to four taxa in one view: columns, rows, and what parts each two. */
export interface Comparison {
  readonly view: View;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  readonly verdicts: readonly Verdict[];
}

/** Rows after those of the body, in this order; what else is described follows. */
const THEN = [
  "wing-pairs",
  "tongue",
  "antenna",
  "face-length",
  "coat",
  "legs",
  "underside",
  "tail",
  "tip",
  "wing-base",
];

/**
 * Compares taxa in one view. Of a taxon outside the group that has forms, the one most like the others is shown.
 *
 * @param taxa two to four, in the order of the columns
 * @param view one of `viewsOf(taxa, …)`
 * @param all every taxon, to name aggregates by
 * @example comparisonOf([redTailed, redShanked], females, all).rows.find(({ part }) => part === "hind-leg")?.settles // true
 */
export function comparisonOf(taxa: readonly IdentifyTaxon[], view: View, all: readonly IdentifyTaxon[]): Comparison {
  const plain = taxa.map((taxon, index): Column => ({ taxon, castes: view.castes[index] ?? [], form: "" }));
  const columns = plain.map((column) => ({ ...column, form: likestForm(column, plain) }));
  const drawn = drawnParts(taxa);
  const rows = partsOf(taxa, drawn)
    .map((part) => rowOf(part, columns, drawn.has(part)))
    .filter(
      ({ cells, agrees, part }) => cells.some((cell) => cell.told !== undefined) && !(agrees && ofEvery(part, taxa)),
    );
  const verdicts = columns.flatMap((one, index) =>
    columns.slice(index + 1).map((other) => verdictOn(one, other, rows, columns, all)),
  );
  const settling = new Set(verdicts.flatMap(({ settling }) => settling));
  return { view, columns, rows: rows.map((row) => ({ ...row, settles: settling.has(row.part) })), verdicts };
}

/** Parts that the drawn bodies have, in the order of their rows. */
export function drawnParts(taxa: readonly Pick<IdentifyTaxon, "plan">[]): Set<string> {
  const plans = [...new Set(taxa.map(({ plan }) => plan))].flatMap((id) => bodyPlan(id) ?? []);
  return new Set(rowsOfPlans(plans).map(({ id }) => id));
}

function partsOf(taxa: readonly IdentifyTaxon[], drawn: ReadonlySet<string>): string[] {
  const lower = new Map([...drawn].map((part) => [part.toLowerCase(), part]));
  const said = taxa.flatMap(({ characters }) => characters.map(({ part }) => lower.get(part.toLowerCase()) ?? part));
  return [...new Set([...drawn, ...THEN, ...said])].filter((part) => part !== "size");
}

function rowOf(part: string, columns: readonly Column[], drawn: boolean): Row {
  const said = columns.map(({ taxon, castes, form }) => told(taxon, part, castes[0] ?? "", form));
  const keys = said.map((one) => (one === undefined ? undefined : [...valuesOf(one.state)].sort().join("|")));
  const counts = new Map<string, number>();
  for (const key of keys) if (key !== undefined) counts.set(key, (counts.get(key) ?? 0) + 1);
  const most = Math.max(0, ...counts.values());
  const usual = keys.find((key) => key !== undefined && counts.get(key) === most);
  return {
    part,
    drawn,
    cells: said.map((one, index) => ({ told: one, unlike: one !== undefined && keys[index] !== usual })),
    agrees: counts.size < 2,
    settles: false,
  };
}

/** What every taxon of the group has says nothing where none but they are compared. */
function ofEvery(part: string, taxa: readonly IdentifyTaxon[]): boolean {
  return (part === "eyes" || part === "antennae" || part === "wing-pairs") && taxa.every(({ outside }) => !outside);
}
