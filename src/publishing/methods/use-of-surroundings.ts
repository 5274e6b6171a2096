import type { Scheme } from "../../scheme/scheme.ts";
import { escapeHtml } from "../markdown.ts";

/** What the methods page says of the use of habitats and flowers. */
export function useSentences({ settings: { surroundings, group } }: Scheme): string[] {
  return [
    `Records that state a habitat, a flower or the like are set against what recorders visited: the term’s share of the visits with the species, over its share of all visits that state one. The ratio is 1 where it was recorded as often there as anywhere (Manly and others 2002). A habitat counts for the whole visit; a flower, nest site or host for the ${escapeHtml(group.one)} that was on it, each once a visit.`,
    "Only everyday recording counts: a survey for one species and a museum lot chose their places by it. The interval is that of the linearised log ratio between 10 km squares, whose visits are alike (Liang and Zeger 1986).",
    `The ratio is not given where fewer than ${surroundings.minimum_visits} visits state a term for the species, or fewer than ${surroundings.minimum_visits_of_term} state the term at all. <b>Visited is not preferred:</b> recorders choose where they walk and which flowers they look at, and write down what they think worth writing.`,
  ];
}
