import type { ChosenSquare, OpenMap } from "./map-session.ts";

/** Visits to one square by its place in the list: of a hectad one number a period, of a tetrad one. */
export function visitsOf({ visits }: OpenMap, size: ChosenSquare["size"], place: number): number[] {
  if (size === "tetrad") return [visits?.tetrads[place] ?? 0];
  return (visits?.hectads ?? []).map((period) => period[place] ?? 0);
}

/** Ids of the visited squares in view, in rising order. */
export function visitedInView({ map, visits, hectads }: OpenMap, part: ChosenSquare["size"]): number[] {
  const layers = part === "hectad" ? ["hectad_cells"] : ["tetrad_spine_solid", "tetrad_page_solid"];
  const seen = [...new Set(map.queryRenderedFeatures({ layers }).map(({ id }) => Number(id)))];
  const firstTetrad = hectads.first + hectads.codes.length;
  const number = (id: number) =>
    part === "hectad"
      ? (visits?.hectads ?? []).reduce((sum, period) => sum + (period[id - hectads.first] ?? 0), 0)
      : (visits?.tetrads[id - firstTetrad] ?? 0);
  return seen.filter((id) => number(id) > 0).toSorted((a, b) => a - b);
}

/** What the map of visits shows now. */
export function visitsInWords(open: OpenMap, some: number, isFine: boolean): string {
  const { map, words, settings } = open;
  if (isFine) return words.say("zoom.visits-view-2km", { some });
  const n = new Set(map.queryRenderedFeatures({ layers: ["hectad_cells"] }).map(({ id }) => id)).size;
  const [earlier, later] = (settings.compared ?? []).map((place) => settings.periods[place]?.label);
  const compares = earlier !== undefined && later !== undefined;
  const when = compares ? words.say("zoom.two-periods", { earlier, later }) : words.say("zoom.visits-any");
  return words.say("zoom.visits-view", { when, some, n });
}
