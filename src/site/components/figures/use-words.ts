import type { UseRow } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { capital, listed, small } from "../text/words.ts";
import { figured } from "./figure-words.ts";

/** Rows of one kind of surroundings, for all castes and for each. */
export interface UseOfKind {
  kind: string;
  label: string;
  of_visit: boolean;
  all: readonly UseRow[];
  byCaste: readonly UseRow[];
}

/**
 * The rows of a taxon by kind of surroundings, in their order.
 *
 * @example usesByKind(figures.surroundings).map(({ label }) => label) // => ["Habitat", "Flowers visited"]
 */
export function usesByKind(rows: readonly UseRow[]): UseOfKind[] {
  return [...Map.groupBy(rows, ({ kind }) => kind)].map(([kind, own]) => ({
    kind,
    label: own[0]?.kind_label ?? kind,
    of_visit: own[0]?.of_visit === true,
    all: own.filter(({ caste }) => caste === "all"),
    byCaste: own.filter(({ caste }) => caste !== "all"),
  }));
}

/**
 * What stands out: the term it was recorded in oftenest against what recorders visited, and those below, of the terms whose
 * interval leaves 1 out. It never says that one is preferred.
 *
 * @param all rows of one kind, of all castes together
 * @example useSentence(rows) // "Recorded **2.1 times as often on heath and moor** as visits there would give (95 % interval 1.8 to 2.4), and less often in gardens."
 */
export function useSentence(all: readonly UseRow[]): string {
  const judged = all.filter((row) => row.judged && row.ratio !== null);
  const [{ reason, of_visit, kind_label } = { reason: "", of_visit: false, kind_label: "" }] = all;
  if (judged.length === 0) return all.length === 0 ? "" : say("season-figures.use-too-little", { reason });
  const ofVisit = of_visit ? "yes" : "no";
  const more = judged.filter(({ low }) => low !== null && low > 1).sort((one, other) => ratioOf(other) - ratioOf(one));
  const less = judged
    .filter(({ high }) => high !== null && high < 1)
    .sort((one, other) => ratioOf(one) - ratioOf(other));
  const names = (rows: readonly UseRow[]) => listed(rows.map(({ term_label }) => small(term_label)));
  const [most, ...others] = more;
  if (most === undefined && less.length === 0)
    return capital(say("season-figures.use-none", { kind: small(kind_label), ofVisit }));
  if (most === undefined) return say("season-figures.use-less", { ofVisit, terms: names(less.slice(0, 3)) });
  return say("season-figures.use-more", {
    ratio: figured(ratioOf(most), 1),
    term: small(most.term_label),
    ofVisit,
    low: figured(most.low ?? 0, 1),
    high: figured(most.high ?? 0, 1),
    others: others.length === 0 ? "none" : names(others.slice(0, 2)),
    fewer: less.length === 0 ? "none" : names(less.slice(0, 2)),
  });
}

function ratioOf({ ratio }: UseRow): number {
  return ratio ?? 1;
}
