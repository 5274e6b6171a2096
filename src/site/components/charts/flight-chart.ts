import { scaleLinear } from "d3-scale";
import { barPath, stepPath } from "./bar-path.ts";

/** Height of a chart in its own units; charts are stretched to the width of the page. */
export const FLIGHT_HEIGHT = 60;
const HEADROOM = 4;

/** One row of the flight-period chart, as SVG path data in a box of 36 × 60. */
export interface FlightRow {
  /** Bars of thirds with visits enough. */
  readonly solid: string;
  /** Bars of thirds with fewer visits than the setting. */
  readonly open: string;
}

/** What a flight-period chart draws: recording effort once, and one row a caste, all on one scale. */
export interface FlightChart {
  readonly effortArea: string;
  readonly effortLine: string;
  readonly rows: readonly FlightRow[];
}

/**
 * The flight-period chart: each caste's records as shares of its year, over visits as shares of theirs.
 *
 * @param castes records by third of the month, 36 numbers each
 * @param visits to the whole group by third of the month
 * @param fewest visits under which a bar is open
 * @returns path data; a caste without records has empty paths
 * @example flightChart([counts], visits, 150).rows[0]?.solid // "M7.15 60V51.9h.7V60zm1 0V…"
 */
export function flightChart(
  castes: readonly (readonly number[])[],
  visits: readonly number[],
  fewest: number,
): FlightChart {
  const rows = castes.map(shares);
  const effort = shares(visits);
  const y = scaleLinear([0, Math.max(1 / 36, ...effort, ...rows.flat())], [FLIGHT_HEIGHT, HEADROOM]);
  const step = stepPath(effort.map((share) => short(y(share))));
  return {
    effortArea: `M0 ${FLIGHT_HEIGHT}${step}V${FLIGHT_HEIGHT}z`,
    effortLine: `M0 ${short(y(effort[0] ?? 0))}${step}`,
    rows: rows.map((row) => {
      const drawn = (few: boolean) =>
        barPath(
          row.map((share, third) => (share > 0 && (visits[third] ?? 0) < fewest === few ? short(y(share)) : undefined)),
          FLIGHT_HEIGHT,
        );
      return { solid: drawn(false), open: drawn(true) };
    }),
  };
}

function shares(counts: readonly number[]): number[] {
  const all = counts.reduce((sum, count) => sum + count, 0);
  return counts.map((count) => (all === 0 ? 0 : count / all));
}

/** One decimal is finer than a pixel; a chart has hundreds of numbers. */
function short(number: number): string {
  return String(Math.round(number * 10) / 10);
}
