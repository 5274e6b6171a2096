import type { AtlasFile, TaxonFile } from "../../publishing/contracts.ts";
import { inPeriod } from "../components/text/in-period.ts";
import { grouped, inWords } from "../components/text/numbers.ts";
import { since } from "../components/text/sentences.ts";
import { counted, listed } from "../components/text/words.ts";
import type { AtlasMap } from "./atlas-map.ts";
import type { BookClass } from "./book-cell.ts";
import type { Glyph } from "./glyph.ts";
import type { TaxonSquares } from "./taxon-squares.ts";

/** One line of a map's key. */
export interface KeyLine {
  readonly glyph: Glyph;
  readonly words: string;
  readonly note: string;
  readonly squares: number;
}

/** Lines of the key under one heading. */
export interface KeyGroup {
  readonly heading: string;
  readonly lines: readonly KeyLine[];
}

type Named = Pick<AtlasFile, "invented" | "territories" | "group" | "coverage_minimum_visits">;

/** Whether a sentence must say so: the records are invented. */
const INVENTED = " Invented records.";

function sideOf({ resolution }: Pick<TaxonSquares, "resolution">): string {
  return resolution === 10_000 ? "10 km" : "2 km";
}

/**
 * The question a species map answers.
 *
 * @example mapTitle("Red-tailed bumblebee", taxon) // "Where the red-tailed bumblebee was recorded, 1990–2005 and 2006–2024, by 10 km square"
 */
export function mapTitle(name: string, squares: TaxonSquares): string {
  const { earlier, later } = squares.periods;
  const years = listed([earlier?.label, later?.label].filter((label) => label !== undefined));
  return `Where ${name} was recorded${years === "" ? "" : `, ${years}`}, by ${sideOf(squares)} square`;
}

/**
 * The counts of a species map in words: by class, then the classes that matter by territory.
 *
 * @param squares sorted squares
 * @param atlas names of territories; whether the records are invented
 * @returns plain sentences
 * @example mapDescription(squares, atlas) // "658 squares found in both periods, 189 newly found, … Invented records."
 */
export function mapDescription(squares: TaxonSquares, atlas: Named): string {
  const { counts, compared } = squares;
  const sentences: string[] = [];
  if (compared) {
    const apart = counts.since + counts.before;
    sentences.push(
      `${counted(counts.both, "square")} found in both periods, ${grouped(counts.new)} newly found, ${grouped(counts.gone)} not refound, ${grouped(apart)} that cannot be compared.`,
    );
    if (counts.new > 0) sentences.push(...byTerritory(squares, atlas, "new", "Newly found"));
    if (counts.gone > 0) sentences.push(...byTerritory(squares, atlas, "gone", "Not refound"));
    if (counts.both > 0) sentences.push(...byTerritory(squares, atlas, "both", "Found in both"));
  } else {
    sentences.push(
      `Recorded in ${counted(counts.both, "square")}.`,
      ...byTerritory(squares, atlas, "both", "Recorded"),
    );
  }
  if (counts.other > 0) sentences.push(`${counted(counts.other, "square")} recorded only in other years.`);
  if (squares.resolution === 10_000) sentences.push(uncovered(squares));
  return sentences.join(" ") + (atlas.invented ? INVENTED : "");
}

function uncovered({ counts, compared }: TaxonSquares): string {
  const number = `${counted(counts.coveredNeither, "square")} ${counts.coveredNeither === 1 ? "is" : "are"}`;
  return compared ? `${number} covered in neither period.` : `${number} not covered.`;
}

function byTerritory(
  { byTerritory: counts }: TaxonSquares,
  { territories }: Named,
  kind: BookClass,
  words: string,
): string[] {
  if (territories.length < 2) return [];
  const parts = territories
    .map(({ id, name }) => ({ name, number: counts.get(id)?.[kind] ?? 0 }))
    .filter(({ number }) => number > 0);
  return parts.length === 0
    ? []
    : [`${words}: ${parts.map(({ name, number }) => `${name} ${grouped(number)}`).join(", ")}.`];
}

const glyph = (kind: BookClass | undefined, hatched: "" | "spine" | "page" | "whole" = ""): Glyph => ({
  kind,
  spineHatched: hatched === "spine" || hatched === "whole",
  pageHatched: hatched === "page" || hatched === "whole",
});

/**
 * The key of a species map: words with counts, in groups; lines of nothing but the main classes are left out when
 * they count no square.
 *
 * @param squares sorted squares
 * @param atlas the group's name
 * @returns groups in the order they are read
 * @example keyGroups(squares, atlas)[0].heading // "Covered in both periods: change can be judged"
 */
export function keyGroups(squares: TaxonSquares, atlas: Named): KeyGroup[] {
  return squares.compared ? comparedKey(squares, atlas) : plainKey(squares, atlas);
}

function comparedKey({ counts, periods, resolution }: TaxonSquares, { group }: Named): KeyGroup[] {
  const [earlier, later] = [periods.earlier?.label ?? "", periods.later?.label ?? ""];
  const uncompared: KeyLine[] = [
    {
      glyph: glyph("since", "spine"),
      words: `Recorded ${periods.later ? since(periods.later) : later}`,
      note: "too little recorded before",
      squares: counts.since,
    },
    {
      glyph: glyph("before", "page"),
      words: `Recorded ${earlier}`,
      note: "too little recorded since",
      squares: counts.before,
    },
  ];
  if (counts.other > 0)
    uncompared.push({
      glyph: glyph("other"),
      words: "Recorded in other years",
      note: "in neither period",
      squares: counts.other,
    });
  const groups: KeyGroup[] = [
    {
      heading: "Covered in both periods: change can be judged",
      lines: [
        {
          glyph: glyph("both"),
          words: "Found in both",
          note: resolution === 10_000 ? `${grouped(counts.bothCovered)} of them covered in both` : "",
          squares: counts.both,
        },
        { glyph: glyph("new"), words: "Newly found", note: `not found ${inPeriod(earlier)}`, squares: counts.new },
        { glyph: glyph("gone"), words: "Not refound", note: `not found ${inPeriod(later)}`, squares: counts.gone },
      ],
    },
    { heading: "Recorded, but cannot be compared", lines: uncompared },
  ];
  if (resolution !== 10_000) return groups;
  const blank = [
    {
      glyph: glyph(undefined),
      words: "Covered in both periods",
      note: `by records of other ${group.many}`,
      squares: counts.coveredBoth,
    },
    {
      glyph: glyph(undefined, "spine"),
      words: "Covered in one of them",
      note: "the other part is hatched",
      squares: counts.coveredOne,
    },
    {
      glyph: glyph(undefined, "whole"),
      words: "Covered in neither",
      note: "nobody can say",
      squares: counts.coveredNeither,
    },
  ];
  return [...groups, { heading: "No record of this species", lines: blank }];
}

function plainKey({ counts, periods, resolution }: TaxonSquares, { group }: Named): KeyGroup[] {
  const recorded: KeyLine[] = [
    {
      glyph: glyph("both"),
      words: "Recorded",
      note: resolution === 10_000 ? (periods.later?.label ?? "") : "in either period",
      squares: counts.both,
    },
  ];
  if (counts.other > 0)
    recorded.push({ glyph: glyph("other"), words: "Recorded in other years", note: "", squares: counts.other });
  if (resolution !== 10_000) return [{ heading: "Recorded", lines: recorded }];
  const blank = [
    {
      glyph: glyph(undefined),
      words: "Covered",
      note: `by records of other ${group.many}`,
      squares: counts.coveredBoth,
    },
    { glyph: glyph(undefined, "whole"), words: "Not covered", note: "nobody can say", squares: counts.coveredNeither },
  ];
  return [
    { heading: "Recorded", lines: recorded },
    { heading: "No record of this species", lines: blank },
  ];
}

/** The rule under the key. @example coverRule(atlas) // "Covered: five or more visits that recorded other bumblebees." */
export function coverRule({ coverage_minimum_visits, group }: Named): string {
  const many =
    coverage_minimum_visits === 1 ? "one visit or more" : `${inWords(coverage_minimum_visits)} or more visits`;
  return `Covered: ${many} that recorded other ${group.many}.`;
}

/**
 * The caption under a full map: squares, ticks, projection, insets. The base map's credit stands beside it.
 *
 * @param map layout
 * @param atlas grids and territories by name
 * @param resolution side of the squares in metres
 * @returns plain sentences
 */
export function mapCaption(
  map: AtlasMap,
  atlas: Pick<AtlasFile, "territories" | "map" | "invented">,
  resolution: 10_000 | 2_000,
): string {
  const grids = [...new Set(atlas.territories.map(({ grid_name }) => grid_name))];
  const own = atlas.territories.find(({ grid }) =>
    map.placements.some((placement) => placement.grid === grid && placement.crs === map.frame.crs),
  );
  const step = map.furniture.tickStep >= 1000 ? `${map.furniture.tickStep / 1000} km` : `${map.furniture.tickStep} m`;
  const ticks = `ticks every ${step}${own ? ` of the ${own.grid_name}` : ` of ${map.frame.crs}`}`;
  const moved = atlas.territories
    .filter(({ id }) => map.insets.some(({ territory }) => territory === id))
    .map(({ name }) => name);
  return [
    `${resolution / 1000} km squares of the ${listed(grids)}; ${ticks}.`,
    moved.length === 0 ? "" : `${listed(moved)} in the inset.`,
    atlas.invented ? INVENTED.trim() : "",
  ]
    .filter(Boolean)
    .join(" ");
}

/** The name a map's title uses: "the red-tailed bumblebee"; names of aggregates and groups keep their capital. */
export function inSentence({
  vernacular_name,
  scientific_name,
  is_aggregate,
}: Pick<TaxonFile, "vernacular_name" | "scientific_name" | "is_aggregate">): string {
  if (vernacular_name === scientific_name) return scientific_name;
  if (is_aggregate) return vernacular_name;
  return `the ${vernacular_name.charAt(0).toLowerCase()}${vernacular_name.slice(1)}`;
}
