import type { Column } from "./comparison.ts";
import { relation, told, valuesOf } from "./described.ts";

/**
 * The form of a taxon outside the group that is most like the others beside it: a hoverfly with a red tail beside a bee
 * with one. Taxa of the atlas are compared in their usual form.
 *
 * @returns empty for the usual form
 * @example likestForm(hoverfly, [redTailed, hoverfly]) // "red-tailed"
 */
export function likestForm(column: Column, columns: readonly Column[]): string {
  const { taxon, castes } = column;
  const others = columns.filter((other) => other !== column);
  if (!taxon.outside) return "";
  const forms = ["", ...new Set(taxon.characters.map(({ form }) => form).filter(Boolean))];
  const parts = [...new Set(taxon.characters.filter(({ form }) => form !== "").map(({ part }) => part))];
  const unlike = (form: string) =>
    parts.reduce((sum, part) => {
      const own = told(taxon, part, castes[0] ?? "", form);
      return sum + others.filter((other) => differs(own, told(other.taxon, part, other.castes[0] ?? "", ""))).length;
    }, 0);
  return forms.reduce((best, form) => (unlike(form) < unlike(best) ? form : best), "");
}

function differs(one: ReturnType<typeof told>, other: ReturnType<typeof told>): boolean {
  if (one === undefined || other === undefined) return false;
  return relation(valuesOf(one.state), valuesOf(other.state)) === "differ";
}
