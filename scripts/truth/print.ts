import { labelOf } from "./scenarios.ts";
import type { Performance } from "./summary.ts";

const HEADS = [
  "method",
  "judged",
  "more",
  "fewer",
  "called %",
  "± s.e.",
  "mean",
  "median",
  "bias",
  "median",
  "cover %",
  "± s.e.",
];

/**
 * Prints one table a scenario, and under it what was said of the species of each real change.
 *
 * @param rows from `summarise`
 */
export function printPerformance(rows: readonly Performance[]): void {
  for (const id of new Set(rows.map(({ scenario }) => scenario))) {
    const own = rows.filter(({ scenario }) => scenario === id);
    console.log(`\n${id}: ${labelOf(id)}`);
    line(HEADS);
    for (const row of own) line(cellsOf(row));
    for (const row of own.filter(({ by_change }) => by_change.length > 1)) printByChange(row);
  }
}

function cellsOf(row: Performance): string[] {
  return [
    row.method,
    `${row.judged}/${row.species}`,
    String(row.more),
    String(row.fewer),
    percent(row.called),
    percent(row.called_error),
    ...[row.mean_estimate, row.median_estimate, row.mean_bias, row.median_bias].map(
      (value) => value?.toFixed(2) ?? "–",
    ),
    percent(row.coverage),
    percent(row.coverage_error),
  ];
}

function printByChange({ method, estimand, by_change }: Performance): void {
  console.log(`  ${method}, held against: ${estimand}`);
  line(["  real change %", "judged", "more", "fewer", "more %", "fewer %", "median", "cover %"]);
  for (const { change, judged, more, fewer, median_estimate, coverage } of by_change)
    line([
      `  ${change > 0 ? "+" : ""}${change}`,
      String(judged),
      String(more),
      String(fewer),
      percent(judged === 0 ? null : more / judged),
      percent(judged === 0 ? null : fewer / judged),
      median_estimate?.toFixed(2) ?? "–",
      percent(coverage),
    ]);
}

function percent(share: number | null): string {
  return share === null ? "–" : (100 * share).toFixed(1);
}

function line(cells: readonly string[]): void {
  console.log(cells.map((cell, i) => (i === 0 ? cell.padEnd(20) : cell.padStart(10))).join(""));
}
