import type { KnownTruthFile, KnownTruthRow } from "../../../src/publishing/contracts.ts";

const CHANGES = [-40, -20, 0, 30, 60];

function row(method: string, called: number, coverage: number | null, changing = false): KnownTruthRow {
  const judged = 400;
  return {
    method,
    scenario: changing ? "changing" : "doubled",
    label: changing ? "species change, effort doubles and moves" : "effort doubles",
    estimand: method === "relative_change" ? "direction against the group" : "2 km squares lived in, %",
    species: 435,
    judged,
    called,
    called_error: 0.008,
    median_bias: coverage === null ? null : 1.5,
    coverage,
    by_change: (changing ? CHANGES : [0]).map((change) => {
      const share = change === 0 ? called / 4 : called * Math.min(1, Math.abs(change) / 40);
      const told = Math.round((judged / (changing ? CHANGES.length : 1)) * share);
      return {
        change,
        judged: changing ? 80 : judged,
        more: change < 0 ? 0 : told,
        fewer: change < 0 ? told : 0,
        coverage,
      };
    }),
  };
}

/** A table of the known truth in which raw counts fail, two methods keep their claim and one has lost it. */
export const KNOWN_TRUTH: KnownTruthFile = {
  made: "Invented for a test: 20 seeds, a group of 60 species.",
  rows: [
    row("raw_counts", 0.97, 0.03),
    row("squares_compared", 0.61, 0.4),
    row("relative_change", 0.031, null),
    row("local_frequency", 0.042, 0.95),
    row("reporting_rate", 0.112, 0.88),
    row("raw_counts", 0.95, 0.04, true),
    row("relative_change", 0.82, null, true),
    row("local_frequency", 0.74, 0.94, true),
    row("reporting_rate", 0.9, 0.9, true),
  ],
  claims: [
    { method: "squares_compared", claim: "none", reason: "" },
    { method: "relative_change", claim: "kept", reason: "" },
    { method: "local_frequency", claim: "kept", reason: "" },
    {
      method: "reporting_rate",
      claim: "withdrawn",
      reason: "11.2 % of unchanged species were called changed where effort doubles",
    },
  ],
};
