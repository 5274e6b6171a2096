import type { SeasonDatesRow, SeasonShiftRow } from "../../../src/publishing/contracts.ts";

const CASTES = [
  ["all", "All castes", 160, 900],
  ["queen", "Queen", 114, 320],
  ["worker", "Worker", 186, 410],
  ["not_stated", "Not stated", 170, 12],
] as const;
const BASES = ["records", "visits", "even_visits"] as const;

/** Dates of the season of an invented taxon, too few where its caste is not stated. */
export function seasonDatesOf(two: boolean): SeasonDatesRow[] {
  return CASTES.flatMap(([caste, caste_label, median, n]) =>
    ["all", "p1", ...(two ? ["p2"] : [])].flatMap((period) =>
      BASES.map((basis): SeasonDatesRow => {
        const row = { caste, caste_label, territory: "all", period, basis, n, vague: 4, of_no_season: 7 };
        if (n < 30) {
          const none = { day_10: null, day_25: null, day_50: null, day_75: null, day_90: null };
          const reason = `${n} visits dated to the day, where 30 are needed`;
          return { ...row, ...none, median_low: null, median_high: null, judged: false, reason };
        }
        const [day_10, day_25, day_75, day_90] = [median - 21, median - 10, median + 12.5, median + 26];
        const interval = { median_low: median - 2.25, median_high: median + 1.75 };
        return { ...row, day_10, day_25, day_50: median, day_75, day_90, ...interval, judged: true, reason: "" };
      }),
    ),
  );
}

/** How its season moved: earlier, nowhere, or not to be told, so that three taxa show all. */
export function seasonShiftsOf(index: number): SeasonShiftRow[] {
  const lines = [
    { method: "yearly_medians", share: 0.5, adjusted: true },
    ...[0.1, 0.5, 0.9].map((share) => ({ method: "regression" as const, share, adjusted: true })),
    { method: "yearly_medians", share: 0.5, adjusted: false },
  ] as const;
  return CASTES.slice(0, 3).flatMap(([caste, caste_label, , n]) =>
    lines.map((line): SeasonShiftRow => {
      const row = { caste, caste_label, ...line, first_year: 1993, last_year: 2023, years: 31, n };
      if (index % 3 === 2)
        return {
          ...row,
          ...{ shift: null, low: null, high: null, judged: false },
          reason: "8 years with 5 visits or more, where 10 are needed",
        };
      const shift = index % 3 === 0 ? -2.1 : 0.3;
      return { ...row, shift, low: shift - 1.2, high: shift + 1.2, judged: true, reason: "" };
    }),
  );
}
