import { type KnownTruthRow, type MethodClaim, TARGETS, type TrendMethod } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { figured } from "../figures/figure-words.ts";
import { methodWords, TREND_METHODS } from "../figures/lines.ts";
import type { Sentence } from "../text/sentences.ts";
import { listed, small } from "../text/words.ts";

/** Fewest species of which a share is given. */
const FEWEST = 20;

/**
 * What a method is called in the table, counting alone included.
 *
 * @example methodName("raw_counts") // => "Squares counted, nothing else"
 */
export function methodName(method: string): string {
  if (method === "raw_counts") return say("truth.raw-counts");
  return isTrendMethod(method) ? methodWords(method).name : method;
}

function isTrendMethod(method: string): method is TrendMethod {
  return (TREND_METHODS as readonly string[]).includes(method);
}

/** Whether no species of the row changes. @example isUnchanging({ by_change: [{ change: 0, … }] }) // true */
export function isUnchanging({ by_change }: Pick<KnownTruthRow, "by_change">): boolean {
  return by_change.every(({ change }) => change === 0);
}

/**
 * Which target a row misses, in words; empty for none. As for the claims, intervals are held against the truth where species change.
 *
 * @example misses({ called: 0.2, coverage: null, by_change: [] }) // => "calls too many changed"
 */
export function misses(row: Pick<KnownTruthRow, "called" | "coverage" | "by_change">): string {
  const { called, coverage } = row;
  if (isUnchanging(row)) return called !== null && called > TARGETS.called ? say("truth.calls-too-many") : "";
  if (coverage === null) return "";
  const [least, most] = TARGETS.coverage;
  return coverage < least ? say("truth.too-narrow") : coverage > most ? say("truth.too-wide") : "";
}

/** True changes among some rows, in order, %. @example changesOf([{ by_change: [] }]) // => [] */
export function changesOf(rows: readonly Pick<KnownTruthRow, "by_change">[]): number[] {
  return [...new Set(rows.flatMap(({ by_change }) => by_change.map(({ change }) => change)))].sort((a, b) => a - b);
}

/**
 * Share in % of the species of one true change that were called so; of those that do not change, called changed at all. As
 * counts where they are fewer than 20.
 *
 * @example powerOf({ by_change: [{ change: -40, judged: 200, more: 1, fewer: 150, coverage: null }] }, -40) // => "75"
 */
export function powerOf({ by_change }: Pick<KnownTruthRow, "by_change">, change: number): string {
  const own = by_change.find((row) => row.change === change);
  if (own === undefined || own.judged === 0) return "–";
  const called = change > 0 ? own.more : change < 0 ? own.fewer : own.more + own.fewer;
  return own.judged < FEWEST
    ? say("truth.few-of", { called, judged: own.judged })
    : figured((100 * called) / own.judged);
}

/** What is said of a claim. @example claimWords({ claim: "kept", reason: "" }) // => "corrects for recording" */
export function claimWords({ claim, reason }: Pick<MethodClaim, "claim" | "reason">): string {
  return claim === "withdrawn" ? say("truth.claim-withdrawn", { reason }) : say(`truth.claim-${claim}`);
}

/**
 * What the table says of counting alone, and of the methods that claim to correct for recording.
 *
 * @example truthSentence([]) // => "No method has been tested where the truth is known, and **none claims to correct for recording**."
 */
export function truthSentence(rows: readonly KnownTruthRow[]): Sentence {
  const most = new Map<string, number>();
  for (const row of rows.filter(isUnchanging))
    if (row.called !== null) most.set(row.method, Math.max(row.called, most.get(row.method) ?? 0));
  if (most.size === 0) return say("truth.untested");
  const words = (share: number) => figured(100 * share);
  const raw = most.get("raw_counts");
  const others = [...most].filter(([method]) => method !== "raw_counts");
  const methods = listed(
    others.map(([method, share]) =>
      say("truth.method-up-to", { method: small(methodName(method)), share: words(share) }),
    ),
  );
  const start = raw === undefined ? "" : say("truth.raw", { share: words(raw) });
  if (methods === "") return start;
  return start === "" ? say("truth.methods-alone", { methods }) : `${start} ${say("truth.methods", { methods })}`;
}
