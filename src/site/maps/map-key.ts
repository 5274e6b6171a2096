import type { AtlasFile } from "../../publishing/contracts.ts";
import { inPeriod, since } from "../components/text/in-period.ts";
import { inWords } from "../components/text/numbers.ts";
import { say } from "../words/say.ts";
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

type Named = Pick<AtlasFile, "group">;

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

function comparedKey(squares: TaxonSquares, { group }: Named): KeyGroup[] {
  const groups: KeyGroup[] = [
    { heading: say("maps.key-judged"), lines: judgedLines(squares) },
    { heading: say("maps.key-apart"), lines: apartLines(squares) },
  ];
  if (squares.resolution !== 10_000) return groups;
  const { counts } = squares;
  const blank: KeyLine[] = [
    {
      glyph: glyph(undefined),
      words: say("maps.covered-both"),
      note: say("maps.by-others", { group: group.many }),
      squares: counts.coveredBoth,
    },
    {
      glyph: glyph(undefined, "spine"),
      words: say("maps.covered-one"),
      note: say("maps.other-hatched"),
      squares: counts.coveredOne,
    },
    {
      glyph: glyph(undefined, "whole"),
      words: say("maps.covered-in-neither"),
      note: say("maps.nobody"),
      squares: counts.coveredNeither,
    },
  ];
  return [...groups, { heading: say("maps.key-no-record"), lines: blank }];
}

function judgedLines({ counts, periods, resolution }: TaxonSquares): KeyLine[] {
  const notFound = (label = "") => say("maps.not-found", { when: inPeriod(label) });
  return [
    {
      glyph: glyph("both"),
      words: say("maps.both"),
      note: resolution === 10_000 ? say("maps.both-covered", { squares: counts.bothCovered }) : "",
      squares: counts.both,
    },
    { glyph: glyph("new"), words: say("maps.new"), note: notFound(periods.earlier?.label), squares: counts.new },
    { glyph: glyph("gone"), words: say("maps.gone"), note: notFound(periods.later?.label), squares: counts.gone },
  ];
}

function apartLines({ counts, periods }: TaxonSquares): KeyLine[] {
  const when = { since: periods.later ? since(periods.later) : "", before: periods.earlier?.label ?? "" };
  const lines: KeyLine[] = [
    {
      glyph: glyph("since", "spine"),
      words: say("maps.recorded-when", { when: when.since }),
      note: say("maps.little-before"),
      squares: counts.since,
    },
    {
      glyph: glyph("before", "page"),
      words: say("maps.recorded-when", { when: when.before }),
      note: say("maps.little-since"),
      squares: counts.before,
    },
  ];
  return counts.other === 0 ? lines : [...lines, otherLine(counts.other, say("maps.in-neither"))];
}

function otherLine(squares: number, note: string): KeyLine {
  return { glyph: glyph("other"), words: say("maps.recorded-other"), note, squares };
}

function plainKey({ counts, periods, resolution }: TaxonSquares, { group }: Named): KeyGroup[] {
  const recorded: KeyLine[] = [
    {
      glyph: glyph("both"),
      words: say("maps.key-recorded"),
      note: resolution === 10_000 ? (periods.later?.label ?? "") : say("maps.in-either"),
      squares: counts.both,
    },
    ...(counts.other === 0 ? [] : [otherLine(counts.other, "")]),
  ];
  const first = { heading: say("maps.key-recorded"), lines: recorded };
  if (resolution !== 10_000) return [first];
  const blank: KeyLine[] = [
    {
      glyph: glyph(undefined),
      words: say("maps.covered"),
      note: say("maps.by-others", { group: group.many }),
      squares: counts.coveredBoth,
    },
    {
      glyph: glyph(undefined, "whole"),
      words: say("maps.uncovered"),
      note: say("maps.nobody"),
      squares: counts.coveredNeither,
    },
  ];
  return [first, { heading: say("maps.key-no-record"), lines: blank }];
}

/** The rule under the key. @example coverRule(atlas) // "Covered: five or more visits that recorded other bumblebees." */
export function coverRule({
  coverage_minimum_visits: visits,
  group,
}: Pick<AtlasFile, "coverage_minimum_visits" | "group">): string {
  return say("maps.cover-rule", { visits, words: inWords(visits), group: group.many });
}
