/** How recording differs between the two periods of an invented country, and whether its species change. */
export interface Scenario {
  readonly id: string;
  /** As printed and shown. */
  readonly label: string;
  /** Visits of the recent period against those of the earlier. */
  readonly effort: number;
  /** Recent visits of a square are multiplied by e to this power for each 100 km that it lies farther north. */
  readonly northward: number;
  /** The same for a square of the highest hills against one of the lowland. */
  readonly uphill: number;
  /** Days by which recent visits are later in the year; below 0 they are earlier. */
  readonly later: number;
  /** What the number of 2 km squares that a species lives in is multiplied by: each holds for an equal share of the group. */
  readonly changes: readonly number[];
}

const SAME = { effort: 1, northward: 0, uphill: 0, later: 0, changes: [1] } as const;
const MOVED = { northward: 0.6, uphill: 1.5 } as const;

/** Real changes of the scenarios in which species change: −40, −20, 0, +30 and +60 %. */
export const REAL_CHANGES: readonly number[] = [0.6, 0.8, 1, 1.3, 1.6];

/** The scenarios, in the order of the table. In all but the last two no species changes anywhere. */
export const SCENARIOS: readonly Scenario[] = [
  { ...SAME, id: "still", label: "nothing changes" },
  { ...SAME, id: "doubled", label: "effort doubles", effort: 2 },
  { ...SAME, ...MOVED, id: "moved", label: "effort moves north and uphill" },
  { ...SAME, id: "shifted", label: "effort moves to two weeks earlier in the year", later: -14 },
  { ...SAME, ...MOVED, id: "all_three", label: "effort doubles and moves, in place and season", effort: 2, later: -14 },
  { ...SAME, id: "changing_still", label: "species change, effort does not", changes: REAL_CHANGES },
  {
    ...SAME,
    ...MOVED,
    id: "changing",
    label: "species change, effort doubles and moves",
    effort: 2,
    changes: REAL_CHANGES,
  },
];

/** The demonstration of the repository, which is invented by its own rules, with nothing but its recording changing. */
export const DEMONSTRATION = { id: "demonstration", label: "the demonstration, in which no species changes" } as const;

/** A scenario in words. @example labelOf("doubled") // => "effort doubles" */
export function labelOf(id: string): string {
  return id === DEMONSTRATION.id ? DEMONSTRATION.label : scenarioOf(id).label;
}

/**
 * The scenario of an id.
 *
 * @throws {Error} for an id there is none of
 * @example scenarioOf("doubled").effort // => 2
 */
export function scenarioOf(id: string): Scenario {
  const found = SCENARIOS.find((scenario) => scenario.id === id);
  if (found === undefined)
    throw new Error(`there is no scenario ${id}; there are ${SCENARIOS.map((one) => one.id).join(", ")}`);
  return found;
}
