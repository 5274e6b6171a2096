import type { IdentifyTruthFile } from "../../../src/publishing/contracts.ts";

const row = (characters: number, known: boolean, first: number): IdentifyTruthFile["rows"][number] => ({
  ...{ characters, place: known, date: known, sightings: 2000 },
  ...{ first, first_or_group: first + 0.05, first_three: first + 0.2, wrong_at_nine: 0.01, wrong_at_seven: 0.04 },
});

/** Invented trials of the identification helper. */
export const IDENTIFY_TRUTH: IdentifyTruthFile = {
  made: { seed: 1, sightings: 2000, records: 120_000 },
  rows: [row(0, true, 0.2), row(0, false, 0.2), row(4, true, 0.75), row(4, false, 0.7)],
  tenths: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((tenth) => ({
    ...{ from: tenth / 10, sightings: 800 - 80 * tenth, said: tenth / 10 + 0.05, right: tenth / 10 + 0.06 },
  })),
  taxa: [{ taxon: "red-tailed", sightings: 300, first: 0.9, first_or_group: 0.95, first_three: 0.98 }],
  groups: { offered: 500, right: 0.9, said: 0.88 },
};
