/** Coverage and change worked out from their definitions, one square at a time: no SQL, no bits, nothing shared. */
import type { RecordRow, Rules } from "./judged-records.ts";
import { distinct, group, lineage, RESOLUTIONS, type Row, squareOf, upwards, visitOf } from "./plain-records.ts";

interface Square {
  square: string;
  resolution_m: number;
  territory: string;
}

/** What is counted from: all used records, and those of them that a figure rests on. */
interface Evidence {
  used: readonly RecordRow[];
  counted: readonly RecordRow[];
  rules: Rules;
}

const CLASSES: Readonly<Record<string, string>> = {
  walks: "everyday",
  pictures: "everyday",
  survey: "targeted",
  week: "mass_event",
  museum: "lot",
};
const classOf = ({ source }: RecordRow) => CLASSES[source ?? "walks"] ?? "";

/** Established, and of no provisional year. */
function isSettled({ established, last_year }: RecordRow, { provisionalYears }: Rules): boolean {
  return (established ?? true) && !(provisionalYears ?? []).includes(last_year);
}

/** The parts of the evidence that each trend is told from. */
function evidenceSets(used: readonly RecordRow[], rules: Rules): Record<string, RecordRow[]> {
  const settled = used.filter((record) => isSettled(record, rules));
  const visits = group(used, visitOf);
  const listOf = (record: RecordRow) => visits.get(visitOf(record) ?? "") ?? [];
  // One taxon explains a list where every name on it is that taxon or stands above it.
  const isOneTaxon = (record: RecordRow) => {
    const names = listOf(record)
      .filter(({ present }) => present)
      .map(({ taxon_id }) => taxon_id);
    const explains = (taxon: string) => names.every((name) => upwards(taxon, rules).has(name));
    return names.length > 0 && Object.keys(rules.within).some(explains);
  };
  const isComplete = (record: RecordRow) => {
    const list = listOf(record);
    return list.some(({ complete }) => complete) && list.some((one) => /everyday|mass_event/.test(classOf(one)));
  };
  return {
    main: settled,
    with_provisional_years: used.filter(({ established }) => established ?? true),
    without_single_species_lists: settled.filter((record) => !isOneTaxon(record)),
    without_targeted: settled.filter((record) => classOf(record) !== "targeted"),
    without_mass_events: settled.filter((record) => classOf(record) !== "mass_event"),
    without_lots: settled.filter((record) => classOf(record) !== "lot"),
    complete_lists: settled.filter(isComplete),
  };
}

function squaresOf(used: readonly RecordRow[]): Square[] {
  return RESOLUTIONS.flatMap((resolution_m) =>
    [...group(used, (record) => squareOf(record, resolution_m))].map(([square, records]) => ({
      square,
      resolution_m,
      territory: records.map(({ territory }) => territory).sort()[0] ?? "",
    })),
  );
}

/** Covered for a taxon: at least so many visits in that square and period on which another taxon was recorded there. */
function isCovered(
  taxon: string,
  { square, resolution_m }: Pick<Square, "square" | "resolution_m">,
  period: number,
  { counted, rules }: Evidence,
  minimum = rules.minimumVisits,
): boolean {
  const own = lineage(taxon, rules);
  const telling = counted.filter(
    (record) =>
      record.present &&
      record.period === period &&
      squareOf(record, resolution_m) === square &&
      !own.has(record.taxon_id),
  );
  return distinct(telling.map(visitOf)) >= minimum;
}

/** What the records say of a taxon in a square in two periods. */
function comparison(
  taxon: string,
  square: Square,
  pair: readonly [number, number],
  evidence: Evidence,
  minimum?: number,
) {
  const { used, counted, rules } = evidence;
  const here = (records: readonly RecordRow[], period?: number) =>
    records.some(
      (record) =>
        record.present &&
        upwards(record.taxon_id, rules).has(taxon) &&
        squareOf(record, square.resolution_m) === square.square &&
        (period === undefined || record.period === period),
    );
  const unsettled = used.filter((record) => !isSettled(record, rules));
  const [recorded_from, recorded_to] = pair.map((period) => here(counted, period)) as [boolean, boolean];
  const [seen_from, seen_to] = pair.map((period) => here(counted, period) || here(unsettled, period)) as [
    boolean,
    boolean,
  ];
  const [covered_from, covered_to] = pair.map((period) => isCovered(taxon, square, period, evidence, minimum)) as [
    boolean,
    boolean,
  ];
  const both = covered_from && covered_to;
  let state: string | null = null;
  if (seen_from && seen_to) state = "retained";
  else if (seen_to) state = recorded_to && both ? "gained" : "not_comparable_since";
  else if (seen_from) state = recorded_from && both ? "lost" : "not_comparable_before";
  return {
    taxon_id: taxon,
    ...square,
    recorded_ever: here(used),
    recorded_from,
    recorded_to,
    covered_from,
    covered_to,
    state,
    seen_from,
    seen_to,
  };
}

type Comparison = ReturnType<typeof comparison>;
const both = ({ covered_from, covered_to }: Comparison) => covered_from && covered_to;
const inBoth = ({ recorded_from, recorded_to }: Comparison) => recorded_from && recorded_to;

/** The compared periods, then each with the next. */
function pairsOf({ periods, compared }: Rules): (readonly [number, number])[] {
  if (compared === null) return [];
  const next = periods.slice(1).map((_, index) => [index, index + 1] as const);
  return [compared, ...next.filter(([from, to]) => `${from} ${to}` !== compared.join(" "))];
}

/** The tables of coverage and change, as the database is asked for them. */
export function plainChange(used: readonly RecordRow[], rules: Rules): Record<string, Row[]> {
  const taxa = Object.keys(rules.within);
  const squares = squaresOf(used);
  const sets = evidenceSets(used, rules);
  const main: Evidence = { used, counted: sets["main"] ?? [], rules };
  const pairs = pairsOf(rules);
  const pair = rules.compared ?? ([-1, rules.periods.length - 1] as const);
  const states = taxa.flatMap((taxon) => squares.map((square) => comparison(taxon, square, pair, main)));
  return {
    square_states: states.map(({ seen_from: _, seen_to: __, state, ...row }) => ({
      ...row,
      state: rules.compared === null ? null : state,
    })),
    change_counts: pairs.flatMap((one) =>
      [rules.minimumVisits, 2 * rules.minimumVisits].flatMap((minimum) =>
        changeCounts(
          taxa,
          taxa.flatMap((taxon) => squares.map((square) => comparison(taxon, square, one, main, minimum))),
          { from_period: one[0], to_period: one[1], minimum_visits: minimum },
        ),
      ),
    ),
    taxon_coverage: taxa.flatMap((taxon) =>
      squares
        .filter((square) => comparison(taxon, square, pair, main).recorded_ever)
        .flatMap((square) =>
          rules.periods.flatMap((_, period) =>
            isCovered(taxon, square, period, main)
              ? [{ taxon_id: taxon, resolution_m: square.resolution_m, square: square.square, period }]
              : [],
          ),
        ),
    ),
    tetrad_shares: pairs.flatMap((one) => taxa.flatMap((taxon) => tetradShares(taxon, one, main, squares))),
    trends: Object.entries(sets).flatMap(([set, counted]) =>
      pairs.flatMap((one) => taxa.map((taxon) => trendOf(taxon, one, { used, counted, rules }, set))),
    ),
    series: pairs.length === 0 ? [] : taxa.flatMap((taxon) => seriesOf(taxon, main)),
    spread: taxa.flatMap((taxon) => spreadOf(taxon, used, rules)),
  };
}

function changeCounts(taxa: readonly string[], states: readonly Comparison[], row: Row): Row[] {
  const territories = ["all", ...new Set(states.map(({ territory }) => territory))];
  return taxa.flatMap((taxon_id) =>
    RESOLUTIONS.flatMap((resolution_m) =>
      territories.flatMap((territory) => {
        const own = states.filter(
          (one) =>
            one.taxon_id === taxon_id &&
            one.resolution_m === resolution_m &&
            (territory === "all" || one.territory === territory),
        );
        if (own.length === 0) return [];
        const count = (test: (one: Comparison) => boolean) => own.filter(test).length;
        return [
          {
            taxon_id,
            ...row,
            resolution_m,
            territory,
            retained: count((one) => inBoth(one) && both(one)),
            gained: count((one) => one.state === "gained"),
            lost: count((one) => one.state === "lost"),
            recorded_both_not_covered: count((one) => inBoth(one) && !both(one)),
            recorded_both_unsettled: count((one) => one.state === "retained" && !inBoth(one)),
            not_comparable_since: count((one) => one.state === "not_comparable_since"),
            not_comparable_before: count((one) => one.state === "not_comparable_before"),
            covered_both_no_record: count((one) => !one.recorded_ever && both(one)),
            covered_one_no_record: count((one) => !one.recorded_ever && one.covered_from !== one.covered_to),
            covered_neither: count((one) => !one.recorded_ever && !one.covered_from && !one.covered_to),
            squares_from: count((one) => one.seen_from),
            squares_to: count((one) => one.seen_to),
          },
        ];
      }),
    ),
  );
}

/** Net change in comparable 10 km squares, from one set. */
function trendOf(taxon_id: string, pair: readonly [number, number], evidence: Evidence, set: string): Row {
  const squares = squaresOf(evidence.used).filter(({ resolution_m }) => resolution_m === 10_000);
  const all = squares.map((square) => comparison(taxon_id, square, pair, evidence));
  const comparable = all.filter(
    (one) =>
      both(one) &&
      one.seen_from === one.recorded_from &&
      one.seen_to === one.recorded_to &&
      (one.recorded_from || one.recorded_to),
  );
  const before = comparable.filter(({ recorded_from }) => recorded_from).length;
  const since = comparable.filter(({ recorded_to }) => recorded_to).length;
  const judged = before > 0 && comparable.length >= (evidence.rules.minimumComparable ?? 20);
  return {
    taxon_id,
    evidence_set: set,
    from_period: pair[0],
    to_period: pair[1],
    n_from: before,
    n_to: since,
    n: comparable.length,
    judged,
    estimate: judged ? (100 * (since - before)) / before : null,
  };
}

/** Of the 10 km squares covered in each period, those that hold the taxon. */
function seriesOf(taxon_id: string, evidence: Evidence): Row[] {
  const squares = squaresOf(evidence.used).filter(({ resolution_m }) => resolution_m === 10_000);
  return evidence.rules.periods.map((_, time) => {
    const covered = squares
      .map((square) => comparison(taxon_id, square, [time, time], evidence))
      .filter((one) => one.covered_from && one.seen_from === one.recorded_from);
    const held = covered.filter(({ recorded_from }) => recorded_from).length;
    return { taxon_id, time, n: covered.length, estimate: covered.length === 0 ? null : (100 * held) / covered.length };
  });
}

/** In hectads where the taxon was recorded in both periods: each period's records, and those of them good to 2 km. */
function tetradShares(
  taxon_id: string,
  [from_period, to_period]: readonly [number, number],
  { counted, rules }: Evidence,
  squares: readonly Square[],
): Row[] {
  const own = counted.filter((record) => record.present && upwards(record.taxon_id, rules).has(taxon_id));
  const inPeriod = (period: number) => own.filter((record) => record.period === period && record.hectad !== null);
  const hectads = [from_period, to_period].map(
    (period) => new Set(inPeriod(period).map((record) => squareOf(record, 10_000))),
  );
  return ["all", "britain", "ireland", "man"].flatMap((territory) => {
    const shared = squares.filter(
      (one) =>
        one.resolution_m === 10_000 &&
        hectads.every((held) => held.has(one.square)) &&
        (territory === "all" || one.territory === territory),
    );
    if (shared.length === 0) return [];
    const codes = new Set(shared.map(({ square }) => square));
    const [before, since] = [from_period, to_period].map((period) =>
      inPeriod(period).filter((record) => codes.has(squareOf(record, 10_000) ?? "")),
    ) as [RecordRow[], RecordRow[]];
    const good = (records: RecordRow[]) => records.filter(({ tetrad }) => tetrad !== null).length;
    return [
      {
        taxon_id,
        from_period,
        to_period,
        territory,
        records_from: before.length,
        at_tetrad_from: good(before),
        records_to: since.length,
        at_tetrad_to: good(since),
      },
    ];
  });
}

/** Squares by the year in which an established record was there at the latest. */
function spreadOf(taxon_id: string, used: readonly RecordRow[], rules: Rules): Row[] {
  const own = used.filter(
    (record) => record.present && (record.established ?? true) && upwards(record.taxon_id, rules).has(taxon_id),
  );
  const firsts = [...group(own, (record) => squareOf(record, 10_000)).values()].map((records) =>
    Math.min(...records.map(({ last_year }) => last_year)),
  );
  return [...new Set(firsts)].map((year) => ({
    taxon_id,
    year,
    squares_new: firsts.filter((one) => one === year).length,
    squares_total: firsts.filter((one) => one <= year).length,
    provisional: (rules.provisionalYears ?? []).includes(year),
  }));
}
