import type { PastRuling } from "./answers.ts";
import type { Desk } from "./desk.ts";

/**
 * Every ruling and opinion on a record, in order, those taken back among them: several determinations stand side by side.
 *
 * @example historyOf({ decisions: [] }, "walks:1") // => []
 */
export function historyOf({ decisions }: Pick<Desk, "decisions">, recordKey: string): PastRuling[] {
  const withdrawn = new Set(decisions.filter(({ ruling }) => ruling === "withdraw").map(({ value }) => value));
  return decisions
    .filter((row) => row.recordKey === recordKey && row.ruling !== "withdraw")
    .map(({ decisionID, batch, ruling, value, identification, partSeen, why, who, when, count }) => ({
      id: decisionID,
      batch,
      ruling,
      value,
      identification,
      partSeen,
      why,
      who,
      when,
      count,
      withdrawn: withdrawn.has(decisionID) || (batch !== "" && withdrawn.has(batch)),
    }));
}
