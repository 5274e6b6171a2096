import { casteChance } from "./caste-chance.ts";
import type { Answers, Helper } from "./narrow.ts";
import type { Candidate } from "./outcome.ts";
import { namedStates, partFacts } from "./part-facts.ts";
import { seasonFactor } from "./season-shares.ts";

/** Whether a reason agrees with the candidate, speaks against it, or is not known. */
export type Stand = "agrees" | "against" | "unknown";

/** One reason, from data; `reason-words.ts` puts it into words. */
export type Reason =
  | { readonly kind: "recorded-here"; readonly stand: "agrees"; readonly year: number | undefined }
  | { readonly kind: "nearest"; readonly stand: Stand; readonly km: number }
  | { readonly kind: "none-near"; readonly stand: "against" }
  | { readonly kind: "in-season"; readonly stand: "agrees"; readonly caste: string }
  | { readonly kind: "out-of-season"; readonly stand: "against"; readonly from: number; readonly to: number }
  | { readonly kind: "caste"; readonly stand: Stand; readonly caste: string; readonly said: string }
  | {
      readonly kind: "agree";
      readonly stand: "agrees";
      readonly answers: readonly { readonly question: string; readonly state: string }[];
    }
  | {
      readonly kind: "differs";
      readonly stand: "against";
      readonly question: string;
      readonly state: string;
      readonly expected: readonly string[];
    }
  | { readonly kind: "varies" | "not-told"; readonly stand: "unknown"; readonly question: string };

/** What the tables hold of a taxon round the place. */
export interface Nearby {
  /** Records in the square, of any date. */
  readonly here: number;
  readonly lastYear: number | undefined;
  /** To the nearest 10 km square with a record; undefined beyond 150 km. */
  readonly nearestKm: number | undefined;
}

/** What reasons are made from, beside the candidate. */
export interface Evidence {
  readonly answers: Answers;
  readonly visits: readonly number[];
  readonly third?: number | undefined;
  /** Undefined where no place is told, or none is published for the taxon. */
  readonly nearby?: Nearby | undefined;
}

/** As far as a neighbourhood reaches, in kilometres: beyond it the nearest square speaks against. */
const NEAR_KM = 40;

/**
 * Why a candidate stands where it does: what was seen, when, where; in this order.
 *
 * @example reasonsFor(helper, candidate, evidence)[0] // { kind: "agree", stand: "agrees", answers: [{ question: "tail", state: "red" }] }
 */
export function reasonsFor(helper: Helper, candidate: Candidate, evidence: Evidence): Reason[] {
  return [
    ...characterReasons(helper, candidate, evidence.answers),
    ...seasonReasons(candidate, evidence),
    ...placeReasons(candidate, evidence),
  ];
}

function characterReasons(
  helper: Helper,
  { taxon, caste, form }: Candidate,
  { states, caste: said }: Answers,
): Reason[] {
  const facts = partFacts(taxon, caste, form, namedStates(helper.taxa));
  const reasons: Reason[] = [];
  const agreeing: { question: string; state: string }[] = [];
  for (const { id, parts } of helper.questions) {
    const state = states.get(id);
    if (state === undefined) continue;
    const own = parts.flatMap((part) => facts.get(part) ?? []);
    const expected = [...new Set(own.flatMap((fact) => fact.states))];
    if (own.length === 0) reasons.push({ kind: "not-told", stand: "unknown", question: id });
    else if (expected.length === 0) reasons.push({ kind: "varies", stand: "unknown", question: id });
    else if (expected.includes(state)) agreeing.push({ question: id, state });
    else reasons.unshift({ kind: "differs", stand: "against", question: id, state, expected });
  }
  if (agreeing.length > 0) reasons.unshift({ kind: "agree", stand: "agrees", answers: agreeing });
  if (said !== undefined && caste !== "" && casteChance(said, caste) < 0.9)
    reasons.push({ kind: "caste", stand: casteChance(said, caste) < 0.5 ? "against" : "unknown", caste, said });
  return reasons;
}

function seasonReasons({ taxon, caste }: Candidate, { visits, third }: Evidence): Reason[] {
  const span = seasonSpan(taxon.season);
  if (third === undefined || span === undefined) return [];
  const inside = third >= span.from && third <= span.to;
  if (inside || seasonFactor(taxon.season, visits, third) >= 0.5)
    return [{ kind: "in-season", stand: "agrees", caste }];
  return [{ kind: "out-of-season", stand: "against", ...span }];
}

/** Thirds of the month between which lie nine in ten of the records; undefined for fewer than ten. */
function seasonSpan(season: readonly number[]): { from: number; to: number } | undefined {
  const total = season.reduce((sum, count) => sum + count, 0);
  if (total < 10) return undefined;
  let sum = 0;
  const running = season.map((count) => (sum += count));
  return {
    from: running.findIndex((count) => count >= 0.05 * total),
    to: running.findIndex((count) => count >= 0.95 * total),
  };
}

function placeReasons({ taxon }: Candidate, { nearby }: Evidence): Reason[] {
  if (nearby === undefined || taxon.outside) return [];
  if (nearby.here > 0) return [{ kind: "recorded-here", stand: "agrees", year: nearby.lastYear }];
  if (nearby.nearestKm === undefined) return [{ kind: "none-near", stand: "against" }];
  return [{ kind: "nearest", stand: nearby.nearestKm <= NEAR_KM ? "unknown" : "against", km: nearby.nearestKm }];
}
