import type { Scheme } from "../../scheme/scheme.ts";
import { claimsOf } from "../claims.ts";
import type { MethodClaim } from "../contracts.ts";
import { knownTruthFile } from "../known-truth-file.ts";
import { localFrequenciesMethod } from "./local-frequencies.ts";
import { relativeChangeMethod } from "./relative-change.ts";
import { reportingRateMethod } from "./reporting-rate.ts";
import { squaresComparedMethod } from "./squares-compared.ts";
import { type ClaimTold, type Statement, section, told } from "./statement.ts";

/**
 * What the methods page says of change: the methods one by one, and how their lines are shown. Whether a method may claim
 * to correct for recording follows from the table of the known truth.
 *
 * @param claims what each method may claim; from the program's own table unless given
 * @returns nothing for an atlas of one period
 */
export function changeStatements(
  scheme: Scheme,
  claims: readonly MethodClaim[] = knownTruthFile().claims,
): Statement[] {
  const { settings } = scheme;
  if (settings.periods.length === 1) return [];
  const claim = (method: string) => claimTold(claims.find((row) => row.method === method) ?? claimsOf([])[2]);
  return [
    ...section("change", told("change"), told("change-limits")),
    ...section("squares-compared", ...squaresComparedMethod(scheme)),
    ...section("local-frequencies", ...localFrequenciesMethod(scheme, claim("local_frequency"))),
    ...section("reporting-rate", ...reportingRateMethod(scheme, claim("reporting_rate"))),
    ...section("change-relative-to-the-group", ...relativeChangeMethod(scheme, claim("relative_change"))),
    ...section("what-it-hangs-on", told("hangs-on")),
    ...section("through-time", told("series", { years: settings.provisional_years.join(", ") || "none" })),
    ...section("first-years", told("first-years", { visits: settings.coverage.minimum_visits })),
  ];
}

/** What follows from the known truth for a claim. */
function claimTold(claim: MethodClaim | undefined): ClaimTold {
  if (claim === undefined || claim.claim === "none") return "";
  const values: Record<string, string> = claim.claim === "withdrawn" ? { reason: claim.reason } : {};
  return { key: `methods.claim-${claim.claim}`, values };
}
