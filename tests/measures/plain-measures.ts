/**
 * The measures worked out again, one record at a time, from their definitions: no SQL, no joins, nothing shared with
 * the program but the shape of a record. Slow and plain on purpose.
 */
import { KINDS, type RecordRow, type Rules } from "./judged-records.ts";

type Row = Record<string, unknown>;

export const RESOLUTIONS = [10_000, 2_000] as const;

/** A taxon and everything above it. */
function upwards(taxon: string, { within }: Rules): Set<string> {
  const all = new Set([taxon]);
  for (const one of all) for (const above of within[one] ?? []) all.add(above);
  return all;
}

/** A taxon, everything above it and everything below it. */
function lineage(taxon: string, rules: Rules): Set<string> {
  const below = Object.keys(rules.within).filter((other) => upwards(other, rules).has(taxon));
  return new Set([...upwards(taxon, rules), ...below]);
}

function squareOf(record: RecordRow, resolution: number): string | null {
  const code = resolution === 10_000 ? record.hectad : record.tetrad;
  return code === null ? null : `${record.grid} ${code}`;
}

/** One place, one day, one recorder or party; null for a date of several days. */
function visitOf(record: RecordRow): string | null {
  if (record.first_day === null || record.first_day !== record.last_day || record.visit_place === "") return null;
  return [record.visit_place, record.first_day, record.recorder].join("|");
}

function distinct<T>(values: readonly (T | null)[]): number {
  return new Set(values.filter((value) => value !== null)).size;
}

function group(records: readonly RecordRow[], key: (record: RecordRow) => string | null): Map<string, RecordRow[]> {
  const groups = new Map<string, RecordRow[]>();
  for (const record of records) {
    const name = key(record);
    if (name !== null) groups.set(name, [...(groups.get(name) ?? []), record]);
  }
  return groups;
}

const least = (values: readonly (number | null)[]) => Math.min(...values.filter((value) => value !== null));
const firstYear = (records: readonly RecordRow[]) =>
  least(records.map((record) => record.first_year ?? record.last_year));
const lastYear = (records: readonly RecordRow[]) => Math.max(...records.map((record) => record.last_year));

/** Everything the database is asked for, by table. */
export function plainMeasures(all: readonly RecordRow[], rules: Rules): Record<string, Row[]> {
  const used = all.filter(({ status }) => status === "used");
  const taxa = Object.keys(rules.within);
  const of = (taxon: string) => used.filter((record) => record.present && upwards(record.taxon_id, rules).has(taxon));
  const squares = squaresOf(used);
  const states = taxa.flatMap((taxon) =>
    squares.map((square) => stateOf(taxon, square, { used, own: of(taxon), rules })),
  );
  return {
    taxon_squares: taxa.flatMap((taxon) =>
      squaresByPeriod(
        of(taxon),
        (records) => ({
          records: records.length,
          visits: distinct(records.map(visitOf)),
          first_year: firstYear(records),
          last_year: lastYear(records),
        }),
        { taxon_id: taxon },
      ),
    ),
    square_effort: squaresByPeriod(
      used,
      (records) => ({ records: records.length, visits: distinct(records.map(visitOf)) }),
      {},
    ),
    square_states: states.map(({ state, ...row }) => ({ ...row, state: rules.compared === null ? null : state })),
    change_counts: rules.compared === null ? [] : changeCounts(taxa, states),
    taxon_coverage: taxa.flatMap((taxon) =>
      RESOLUTIONS.flatMap((resolution_m) =>
        [...new Set(of(taxon).map((record) => squareOf(record, resolution_m)))]
          .filter((square) => square !== null)
          .flatMap((square) =>
            rules.periods.flatMap((_, period) =>
              isCovered(taxon, { square, resolution_m }, period, { used, rules })
                ? [{ taxon_id: taxon, resolution_m, square, period }]
                : [],
            ),
          ),
      ),
    ),
    ...seasonsAndYears(taxa, of, used),
    taxon_totals: taxa.filter((taxon) => of(taxon).length > 0).map((taxon) => totalsOf(taxon, of(taxon), rules)),
    off_map: taxa.flatMap((taxon) =>
      RESOLUTIONS.flatMap((resolution_m) => {
        const reason = (record: RecordRow) =>
          squareOf(record, resolution_m) !== null
            ? null
            : resolution_m === 10_000
              ? record.hectad_reason
              : record.tetrad_reason;
        return [...group(of(taxon), reason)].map(([name, records]) => ({
          taxon_id: taxon,
          resolution_m,
          reason: name,
          records: records.length,
        }));
      }),
    ),
    tetrad_shares: rules.compared === null ? [] : tetradShares(used, rules.compared),
  };
}

function squaresOf(used: readonly RecordRow[]): { square: string; resolution_m: number; territory: string }[] {
  return RESOLUTIONS.flatMap((resolution_m) =>
    [...group(used, (record) => squareOf(record, resolution_m))].map(([square, records]) => ({
      square,
      resolution_m,
      territory: records.map(({ territory }) => territory).sort()[0] ?? "",
    })),
  );
}

function squaresByPeriod(records: readonly RecordRow[], count: (records: RecordRow[]) => Row, row: Row): Row[] {
  return RESOLUTIONS.flatMap((resolution_m) =>
    [
      ...group(records, (record) =>
        squareOf(record, resolution_m) === null ? null : `${squareOf(record, resolution_m)}|${record.period}`,
      ),
    ].map(([key, own]) => {
      const [square, period] = key.split("|");
      return { ...row, resolution_m, square, period: period === "null" ? null : Number(period), ...count(own) };
    }),
  );
}

/** Covered for a taxon: at least so many visits in that square and period on which another taxon was recorded there. */
function isCovered(
  taxon: string,
  { square, resolution_m }: { square: string; resolution_m: number },
  period: number,
  { used, rules }: { used: readonly RecordRow[]; rules: Rules },
): boolean {
  const own = lineage(taxon, rules);
  const telling = used.filter(
    (record) =>
      record.present &&
      record.period === period &&
      squareOf(record, resolution_m) === square &&
      !own.has(record.taxon_id),
  );
  return distinct(telling.map(visitOf)) >= rules.minimumVisits;
}

function stateOf(
  taxon: string,
  square: { square: string; resolution_m: number; territory: string },
  { used, own, rules }: { used: readonly RecordRow[]; own: readonly RecordRow[]; rules: Rules },
) {
  const [from, to] = rules.compared ?? [-1, rules.periods.length - 1];
  const here = own.filter((record) => squareOf(record, square.resolution_m) === square.square);
  const recorded_from = here.some(({ period }) => period === from);
  const recorded_to = here.some(({ period }) => period === to);
  const covered_from = isCovered(taxon, square, from, { used, rules });
  const covered_to = isCovered(taxon, square, to, { used, rules });
  const comparable = covered_from && covered_to;
  const state =
    recorded_from && recorded_to
      ? "retained"
      : recorded_to
        ? comparable
          ? "gained"
          : "not_comparable_since"
        : recorded_from
          ? comparable
            ? "lost"
            : "not_comparable_before"
          : null;
  return {
    taxon_id: taxon,
    ...square,
    recorded_ever: here.length > 0,
    recorded_from,
    recorded_to,
    covered_from,
    covered_to,
    state,
  };
}

function changeCounts(taxa: readonly string[], states: readonly ReturnType<typeof stateOf>[]): Row[] {
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
        const count = (test: (one: (typeof own)[number]) => boolean) => own.filter(test).length;
        const both = ({ covered_from, covered_to }: (typeof own)[number]) => covered_from && covered_to;
        return [
          {
            taxon_id,
            resolution_m,
            territory,
            retained: count((one) => one.state === "retained" && both(one)),
            gained: count((one) => one.state === "gained"),
            lost: count((one) => one.state === "lost"),
            recorded_both_not_covered: count((one) => one.state === "retained" && !both(one)),
            not_comparable_since: count((one) => one.state === "not_comparable_since"),
            not_comparable_before: count((one) => one.state === "not_comparable_before"),
            covered_both_no_record: count((one) => !one.recorded_ever && both(one)),
            covered_one_no_record: count((one) => !one.recorded_ever && one.covered_from !== one.covered_to),
            covered_neither: count((one) => !one.recorded_ever && !one.covered_from && !one.covered_to),
            squares_from: count((one) => one.recorded_from),
            squares_to: count((one) => one.recorded_to),
          },
        ];
      }),
    ),
  );
}

function seasonsAndYears(
  taxa: readonly string[],
  of: (taxon: string) => RecordRow[],
  used: readonly RecordRow[],
): Record<string, Row[]> {
  const castes = [...new Set(KINDS.flat())];
  const ofCaste = (taxon: string, caste: string) => of(taxon).filter(({ kind_id }) => KINDS[kind_id]?.includes(caste));
  const byThird = (records: readonly RecordRow[]) => [
    ...group(records, ({ third }) => (third === null ? null : String(third))),
  ];
  const byYear = (records: readonly RecordRow[]) => [
    ...group(records, ({ first_year, last_year }) => (first_year === last_year ? String(first_year) : null)),
  ];
  return {
    taxon_season: taxa.flatMap((taxon_id) =>
      castes.flatMap((caste) =>
        byThird(ofCaste(taxon_id, caste)).map(([third, records]) => ({
          taxon_id,
          caste,
          third: Number(third),
          records: records.length,
          visits: distinct(records.map(visitOf)),
        })),
      ),
    ),
    season_left_out: taxa.flatMap((taxon_id) =>
      castes.flatMap((caste) => {
        const records = ofCaste(taxon_id, caste).filter(({ third }) => third === null).length;
        return records === 0 ? [] : [{ taxon_id, caste, records }];
      }),
    ),
    season_all: taxa.flatMap((taxon_id) =>
      byThird(of(taxon_id)).map(([third, records]) => ({ taxon_id, third: Number(third), records: records.length })),
    ),
    season_effort: byThird(used.filter((record) => visitOf(record) !== null)).map(([third, records]) => ({
      third: Number(third),
      visits: distinct(records.map(visitOf)),
    })),
    taxon_years: taxa.flatMap((taxon_id) =>
      byYear(of(taxon_id)).map(([year, records]) => ({
        taxon_id,
        year: Number(year),
        records: records.length,
        visits: distinct(records.map(visitOf)),
      })),
    ),
    effort_years: byYear(used).map(([year, records]) => ({
      year: Number(year),
      records: records.length,
      visits: distinct(records.map(visitOf)),
    })),
  };
}

function totalsOf(taxon_id: string, own: readonly RecordRow[], rules: Rules): Row {
  const latest = own.filter(({ period }) => period === rules.periods.length - 1);
  const squares = (records: readonly RecordRow[], resolution: number) =>
    distinct(records.map((record) => squareOf(record, resolution)));
  return {
    taxon_id,
    records: own.length,
    visits: distinct(own.map(visitOf)),
    first_year: firstYear(own),
    last_year: lastYear(own),
    hectads: squares(own, 10_000),
    hectads_latest: squares(latest, 10_000),
    tetrads: squares(own, 2_000),
    tetrads_latest: squares(latest, 2_000),
  };
}

/** In hectads recorded in both compared periods: each period's records, and those of them good to 2 km. */
function tetradShares(used: readonly RecordRow[], compared: [number, number]): Row[] {
  const inPeriod = (period: number) =>
    used.filter((record) => record.present && record.period === period && record.hectad !== null);
  const squares = compared.map((period) => new Set(inPeriod(period).map((record) => squareOf(record, 10_000))));
  return compared.flatMap((period) => {
    const records = inPeriod(period).filter((record) => squares.every((own) => own.has(squareOf(record, 10_000))));
    return records.length === 0
      ? []
      : [{ period, records: records.length, at_tetrad: records.filter(({ tetrad }) => tetrad !== null).length }];
  });
}
