import type { Scheme } from "../../scheme/scheme.ts";
import { percent, type ToldMethod } from "./statement.ts";

/** Squares compared, as the methods page tells it. */
export function squaresComparedMethod({ settings: { change, coverage } }: Scheme): ToldMethod {
  const stricter = coverage.stricter_minimum_visits ?? 2 * coverage.minimum_visits;
  return {
    does: "Of the squares covered in both periods by visits that named others, those that hold the species in both periods (<i>b</i>), only in the later one (<i>n</i>, newly found) and only in the earlier one (<i>o</i>, not refound).",
    formulas: [
      "net change = 100 (<i>n</i> − <i>o</i>) / (<i>b</i> + <i>o</i>) %",
      "turnover = 100 (<i>n</i> + <i>o</i>) / (<i>b</i> + <i>n</i> + <i>o</i>) %",
    ],
    tells:
      "in how many more or fewer of the comparable squares the species was found. A square recorded in one period and too little visited in the other cannot be compared; it says where the species is, not how it has changed.",
    tellsNot:
      "that the species changed so: it is <b>not corrected for recording</b>. More visits to the same squares find more of everything. Part of the turnover is always a species that was there and not found.",
    speaks: `from ${change.minimum_comparable_squares} comparable squares. It is told under two rules: a square is covered by ${coverage.minimum_visits} visits, or by ${stricter}. At 2 km it speaks only where at least ${percent(change.minimum_tetrad_share)} of the species’ records of each period are good to 2 km, in the 10 km squares that have some in both, since better references look like new squares.`,
    few: "the interval is exact: of the squares that changed, the share newly found has its 95 % interval, carried over to squares. It is never narrower than 95 %, often wider, and leaves out no change exactly where the exact test of McNemar does. It allows for chance among the squares, not for recording.",
    source: "C. J. Clopper and E. S. Pearson (1934), <i>Biometrika</i> 26: 404–413, for the interval.",
    reading:
      "that the interval is conditional on the number of squares that changed, and that only records of established animals outside provisional years count.",
  };
}
