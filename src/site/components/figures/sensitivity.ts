import type { MethodClaim, TrendMethod, TrendRow } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { inWords } from "../text/numbers.ts";
import type { Sentence } from "../text/sentences.ts";
import { listed, small } from "../text/words.ts";
import { evidenceName, evidenceOrder } from "./evidence-words.ts";
import type { FigureRow } from "./figure-row.ts";
import { type Direction, type Line, linesOf, saysOf } from "./lines.ts";
import { trendRow } from "./trend-rows.ts";

/** One method under every set of evidence, the headline set first. */
export interface Sensitivity {
  readonly line: Line;
  readonly rows: readonly FigureRow[];
  /** Names of the sets under which it says something else. */
  readonly moved: readonly string[];
  /** Whether it is silent under every set. */
  readonly silent: boolean;
}

/**
 * How each method's answer changes with what is counted.
 *
 * @param compared the pair of periods
 * @returns methods in the order of their lines; those without a headline trend are left out
 * @example sensitivityOf([], [], ["p1", "p2"]) // => []
 */
export function sensitivityOf(
  trends: readonly TrendRow[],
  claims: readonly MethodClaim[],
  compared: readonly [string, string],
): Sensitivity[] {
  const sets = evidenceOrder(trends.map(({ evidence_set }) => evidence_set)).filter((set) => set !== "main");
  const under = (set: string) => linesOf(trends, claims, compared, set);
  return under("main").map((line) => {
    const others = sets.flatMap((set) => {
      const other = under(set).find(({ method }: { method: TrendMethod }) => method === line.method);
      return other === undefined ? [] : [{ set, other, moves: whatMoves(line.direction, other) }];
    });
    return {
      line,
      rows: [
        trendRow(evidenceName("main"), line),
        ...others.map(({ set, other, moves }) => ({
          ...trendRow(evidenceName(set), other),
          says: moves === "" ? say("lines.the-same") : moves,
          differs: moves !== "",
        })),
      ],
      moved: others.filter(({ moves }) => moves !== "").map(({ set }) => evidenceName(set)),
      silent: [line, ...others.map(({ other }) => other)].every(({ direction }) => direction === null),
    };
  });
}

/**
 * What a line says that the headline line does not, in words; empty where both say the same.
 *
 * @param main direction of the headline line
 * @example whatMoves("more", { direction: "none", more: "more squares", fewer: "fewer squares" }) // => "no longer a direction"
 */
export function whatMoves(main: Direction, other: Pick<Line, "direction" | "more" | "fewer">): string {
  const { direction } = other;
  if (direction === main) return "";
  if (direction === null) return say("lines.no-longer-judged");
  if (main === null) return say("lines.now-judged", { says: saysOf(other) });
  if (direction === "none") return say("lines.no-longer-points");
  return say(main === "none" ? "lines.now" : "lines.turns-round", { says: saysOf(other) });
}

/** Most sets that a sentence names. */
const NAMED_SETS = 3;

/**
 * What hangs on which part of the evidence, in a sentence.
 *
 * @example sensitivitySentence([]) // => ""
 */
export function sensitivitySentence(parts: readonly Pick<Sensitivity, "line" | "moved" | "silent">[]): Sentence {
  if (parts.length === 0) return "";
  const speaking = parts.filter(({ silent }) => !silent);
  if (speaking.length === 0) return say("lines.hangs-on-nothing-none");
  const sets = new Set(speaking.flatMap(({ moved }) => moved));
  if (sets.size === 0) return say("lines.hangs-on-nothing", { n: speaking.length });
  if (sets.size > NAMED_SETS) return say("lines.hangs-on-much");
  const told = [...sets].map((set) => {
    const moved = speaking.filter(({ moved: own }) => own.includes(set));
    const [{ line } = speaking[0] as Sensitivity] = moved;
    const n = moved.length;
    return n === 1
      ? say("lines.set-moves-line", { set: small(set), line: small(line.name) })
      : say("lines.set-moves-lines", { set: small(set), n, words: inWords(n) });
  });
  return say("lines.hangs-on", { sets: listed(told) });
}
