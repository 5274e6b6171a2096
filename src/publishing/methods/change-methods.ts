import type { Scheme } from "../../scheme/scheme.ts";
import { claimsOf } from "../claims.ts";
import type { MethodClaim } from "../contracts.ts";
import { knownTruthFile } from "../known-truth-file.ts";
import { localFrequenciesMethod } from "./local-frequencies.ts";
import { relativeChangeMethod } from "./relative-change.ts";
import { reportingRateMethod } from "./reporting-rate.ts";
import { squaresComparedMethod } from "./squares-compared.ts";
import { methodSection, number, type Statement, section } from "./statement.ts";

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
  const claim = (method: string) => claimSentence(claims.find((row) => row.method === method) ?? claimsOf([])[2]);
  return [
    ...section(
      "Change",
      "Up to four methods tell change, each by itself, from records of established animals outside provisional years. They answer different questions: read them side by side. Where their intervals leave out no change on opposite sides they disagree, and the page says so; where a method has too little to go by it says that it is not applicable, and why.",
      "No method sees what nobody recorded, and none is an assessment of risk. Figures relative to the group say more, or fewer, squares than expected from the group as a whole: where the whole group declines, they do not.",
    ),
    ...methodSection("Squares compared", squaresComparedMethod(scheme), ""),
    ...methodSection("Local frequencies", localFrequenciesMethod(scheme), claim("local_frequency")),
    ...methodSection("Reporting rate", reportingRateMethod(scheme), claim("reporting_rate")),
    ...methodSection("Change relative to the group", relativeChangeMethod(scheme), claim("relative_change")),
    ...section(
      "What it hangs on",
      "Each method is run again with provisional years, without visits that named one species, without surveys for one species, without mass events, without specimens and literature, and with complete lists only. A bar marks where the line then points another way, loses its direction or can no longer be judged. Such a figure rests on one kind of record: quote it with that.",
    ),
    ...section(
      "Through time",
      `Series by period and year come from the same methods, with the same minimums. Neighbouring figures share their squares, so that two intervals which overlap may still differ.${settings.provisional_years.length > 0 ? ` Provisional years (${settings.provisional_years.map((year) => String(year)).join(", ")}) are open and enter no trend.` : ""}`,
    ),
    ...section(
      "First years",
      `A species without a square in the earlier period has no change to tell, and no index of it. In its place stands a map of the years in which squares were first recorded; a first record may come long after a first arrival, and ${number(settings.coverage.minimum_visits)} visits that named others are what makes a square without it count as covered.`,
    ),
  ];
}

/** What follows from the known truth for a claim, as a sentence. */
function claimSentence(claim: MethodClaim | undefined): string {
  switch (claim?.claim) {
    case "kept":
      return 'It claims to correct for recording, which the <a href="#known-truth">known truth</a> bears out.';
    case "withdrawn":
      return `It does <b>not</b> claim to correct for recording: where the <a href="#known-truth">truth is known</a>, ${claim.reason}.`;
    case "rank":
      return 'It ranks the species of the group and claims no correction: at most one in twenty can stand out, whatever happens, as the <a href="#known-truth">known truth</a> shows.';
    case "untested":
      return "Its correction for recording is untested, and nothing is claimed of it.";
    default:
      return "";
  }
}
