import { type KnownTruthRow, type MethodClaim, TARGETS, type TrendMethod } from "./contracts.ts";

/**
 * What each method sets out to claim. The squares compared never claimed a correction. The relative index calls at most
 * one in twenty of a group whatever happens, so that no table can bear out a claim of it: it ranks.
 */
const CLAIMS: Readonly<Record<TrendMethod, "none" | "rank" | "corrects">> = {
  squares_compared: "none",
  relative_change: "rank",
  local_frequency: "corrects",
  reporting_rate: "corrects",
};

/**
 * What each method of change may claim, from what it says of species whose change is known: it corrects for recording if
 * under every way of recording at most 5 % of unchanged species are called changed, and, where species change, 92 to 97 %
 * of intervals hold the truth if it has the interval's unit. A method that has spoken of no unchanged species is untested and claims
 * nothing. Shares are taken as they are, without allowance for the chance among seeds.
 *
 * @returns one claim a method, with the first target missed in words
 * @example claimsOf([]).map(({ claim }) => claim) // => ["none", "rank", "untested", "untested"]
 */
export function claimsOf(rows: readonly KnownTruthRow[]): MethodClaim[] {
  return (Object.keys(CLAIMS) as TrendMethod[]).map((method) => {
    const claim = CLAIMS[method];
    if (claim !== "corrects") return { method, claim, reason: "" };
    const own = rows.filter((row) => row.method === method && row.judged > 0);
    if (!own.some(isUnchanging)) return { method, claim: "untested", reason: "" };
    const reason = own.map(missed).find((words) => words !== "") ?? "";
    return { method, claim: reason === "" ? "kept" : "withdrawn", reason };
  });
}

/** Whether no species changes; where some do, what stays is called changed rightly by a method relative to the group. */
function isUnchanging({ by_change }: KnownTruthRow): boolean {
  return by_change.every(({ change }) => change === 0);
}

/** The target one row misses, in words; empty where it misses none. */
function missed(row: KnownTruthRow): string {
  const { label, called, coverage } = row;
  // Where nothing changes an interval that misses 0 is a false call, and there may be as few of these as can be.
  if (isUnchanging(row))
    return called !== null && called > TARGETS.called
      ? `${percent(called)} of unchanged species were called changed where ${label}`
      : "";
  const [least, most] = TARGETS.coverage;
  if (coverage !== null && (coverage < least || coverage > most))
    return `${percent(coverage)} of its 95 % intervals held the truth where ${label}`;
  return "";
}

function percent(share: number): string {
  return `${(100 * share).toLocaleString("en-GB", { maximumFractionDigits: 1 })} %`;
}
