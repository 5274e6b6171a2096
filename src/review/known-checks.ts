import { Mistake } from "../mistake.ts";
import { editDistance } from "../names/name-text.ts";
import { isFindingTitled } from "../records/finding-titles.ts";
import type { Settings } from "../scheme/settings.ts";
import { CHECKS } from "./checks/index.ts";

/**
 * Refuses settings that give a check a weight which no check has the name of: slips would change nothing, and be told to
 * nobody.
 *
 * @throws {Mistake} on the first such name, with the one that may be meant
 * @example refuseUnknownChecks({ checks: { severity: { date_heapin: "off" } } }) // throws: did you mean date_heaping?
 */
export function refuseUnknownChecks({ checks }: { checks: Pick<Settings["checks"], "severity"> }): void {
  const own = CHECKS.map(({ name }) => name);
  const unknown = Object.keys(checks.severity).find((name) => !own.includes(name) && !isFindingTitled(name));
  if (unknown === undefined) return;
  const near = own.find((name) => editDistance(name, unknown, 2) <= 2);
  throw new Mistake(
    `checks.severity “${unknown}”`,
    "is the name of no check",
    near === undefined
      ? "take it out, or write a name of column check in review/findings.csv"
      : `did you mean ${near}?`,
    { file: "atlas.yaml" },
  );
}
