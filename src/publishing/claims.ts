import type { KnownTruthRow, MethodClaim, TrendMethod } from "./contracts.ts";

/** Largest share of unchanged species that a method may call changed, and bounds of the share of 95 % intervals that hold the truth. */
export const TARGETS = Object.freeze({ called: 0.05, coverage: [0.92, 0.97] as readonly [number, number] });

/** Which methods claim to correct for recording. The squares compared never did. */
const CLAIMS: Readonly<Record<TrendMethod, boolean>> = {
  squares_compared: false,
  relative_change: true,
  local_frequency: true,
  reporting_rate: true,
};

/**
 * What each method of change may claim, from what it says of species whose change is known: it corrects for recording if
 * under every way of recording at most 5 % of unchanged species are called changed, and 92 to 97 % of intervals hold the
 * truth where the truth has the interval's unit. A method that has spoken of none is untested and claims nothing.
 *
 * @returns one claim a method, with the first target missed in words
 * @example claimsOf([]).map(({ claim }) => claim) // => ["none", "untested", "untested", "untested"]
 */
export function claimsOf(rows: readonly KnownTruthRow[]): MethodClaim[] {
  return (Object.keys(CLAIMS) as TrendMethod[]).map((method) => {
    if (!CLAIMS[method]) return { method, claim: "none", reason: "" };
    const own = rows.filter((row) => row.method === method && row.taxa > 0);
    if (!own.some(({ change_percent }) => change_percent === 0)) return { method, claim: "untested", reason: "" };
    const reason = own.map(missed).find((words) => words !== "") ?? "";
    return { method, claim: reason === "" ? "kept" : "withdrawn", reason };
  });
}

/** The target one row misses, in words; empty where it misses none. */
function missed({ label, change_percent, called_more, called_fewer, coverage }: KnownTruthRow): string {
  const called = (called_more ?? 0) + (called_fewer ?? 0);
  if (change_percent === 0 && called > TARGETS.called)
    return `${percent(called)} of unchanged species were called changed where ${label}`;
  const [least, most] = TARGETS.coverage;
  if (coverage !== null && (coverage < least || coverage > most))
    return `${percent(coverage)} of its 95 % intervals held the truth where ${label}`;
  return "";
}

function percent(share: number): string {
  return `${(100 * share).toLocaleString("en-GB", { maximumFractionDigits: 1 })} %`;
}
