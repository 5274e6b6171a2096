import type { KnownTruthFile, KnownTruthRow } from "../../../src/publishing/contracts.ts";

function row(method: string, label: string, change: number, called: number, coverage: number | null): KnownTruthRow {
  const [called_more, called_fewer] = change < 0 ? [0, called] : [called, 0];
  return {
    method,
    scenario: label.replaceAll(" ", "_"),
    label,
    change_percent: change,
    taxa: 400,
    silent: 35,
    called_more,
    called_fewer,
    bias: coverage === null ? null : 1.5,
    coverage,
  };
}

/** A table of the known truth in which raw counts fail, two methods keep their claim and one has lost it. */
export const KNOWN_TRUTH: KnownTruthFile = {
  made: "Invented for a test: 20 seeds, group of 60 species.",
  rows: [
    row("raw_counts", "effort doubles", 0, 0.97, null),
    row("squares_compared", "effort doubles", 0, 0.61, null),
    row("relative_change", "effort doubles", 0, 0.031, null),
    row("local_frequency", "effort doubles", 0, 0.042, 0.95),
    row("reporting_rate", "effort doubles", 0, 0.112, 0.88),
    row("relative_change", "effort doubles", -40, 0.82, null),
    row("local_frequency", "effort doubles", -40, 0.74, 0.94),
    row("reporting_rate", "effort doubles", -40, 0.9, 0.9),
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
