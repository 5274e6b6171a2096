import type { Summary } from "./summary.ts";

/** Prints the tables of a summary, shares as percentages. */
export function printSummary({ rows, tenths, taxa, groups }: Summary): void {
  const percent = (share: number) => (100 * share).toFixed(1);
  const line = (...cells: (string | number)[]) =>
    console.log(cells.map((cell, i) => (i === 0 ? String(cell).padEnd(36) : String(cell).padStart(11))).join(""));
  line("told", "sightings", "first", "or group", "first 3", "wrong ≥ .9", "wrong ≥ .7");
  for (const row of rows)
    line(
      [`${row.characters} characters`, row.place ? "place" : "", row.date ? "date" : ""].filter(Boolean).join(", "),
      row.sightings,
      ...[row.first, row.first_or_group, row.first_three, row.wrong_at_nine, row.wrong_at_seven].map(percent),
    );
  console.log("");
  line("chance of the first", "sightings", "said", "right");
  for (const { from, sightings, said, right } of tenths)
    line(`${from.toFixed(1)} to ${(from + 0.1).toFixed(1)}`, sightings, percent(said), percent(right));
  line("groups offered", groups.offered, percent(groups.said), percent(groups.right));
  console.log("");
  line("taxon (4 characters, place, date)", "sightings", "first", "or group", "first 3");
  for (const { taxon, sightings, first, first_or_group, first_three } of taxa)
    line(taxon, sightings, ...[first, first_or_group, first_three].map(percent));
}
