/** Effort, samples of visits and coverage rules worked out again, one record at a time, from their definitions. */
import type { RecordRow, Rules } from "../judged-records.ts";
import { distinct, group, RESOLUTIONS, type Row, squareOf, upwards, visitOf } from "../plain-records.ts";

/** Fewest taxa that explain some names: tries every set of taxa. */
function fewest(names: ReadonlySet<string>, rules: Rules): number {
  const taxa = Object.keys(rules.within);
  let best = taxa.length;
  for (let set = 0; set < 2 ** taxa.length; set += 1) {
    const chosen = taxa.filter((_, index) => Math.floor(set / 2 ** index) % 2 === 1);
    const explained = [...names].every((name) => chosen.some((taxon) => upwards(taxon, rules).has(name)));
    if (explained) best = Math.min(best, chosen.length);
  }
  return best;
}

const namesOf = (records: readonly RecordRow[]) =>
  new Set(records.filter(({ present }) => present).map(({ taxon_id }) => taxon_id));

/** The most ordinary of the sources a visit's records came from: 0 everyday, 1 mass event, 2 survey, 3 lot. */
function classOf(records: readonly RecordRow[]): number {
  const classes = { walks: 0, pictures: 0, week: 1, survey: 2, museum: 3 };
  return Math.min(...records.map(({ source = "walks" }) => classes[source as keyof typeof classes]));
}

interface Visit {
  listLength: number;
  complete: boolean;
  class: number;
  recorder: string;
  period: number | null;
}

function visitsOf(used: readonly RecordRow[], rules: Rules): Map<string, Visit> {
  return new Map(
    [...group(used, visitOf)].map(([visit, records]) => {
      const own = classOf(records);
      const complete = own < 2 && records.some((record) => record.complete === true);
      const [{ recorder, period } = { recorder: "", period: null }] = records;
      return [visit, { listLength: fewest(namesOf(records), rules), complete, class: own, recorder, period }];
    }),
  );
}

function effortOf(visits: readonly Visit[]): Row {
  const count = (from: number, to: number) =>
    visits.filter(({ listLength }) => listLength >= from && listLength <= to).length;
  return {
    visits: visits.length,
    visits_one_species: count(1, 1),
    visits_two_or_three: count(2, 3),
    visits_four_or_more: count(4, Number.POSITIVE_INFINITY),
    complete_lists: visits.filter(({ complete }) => complete).length,
  };
}

const visitsIn = (records: readonly RecordRow[], visits: ReadonlyMap<string, Visit>) =>
  [...new Set(records.map(visitOf))].flatMap((visit) => visits.get(visit ?? "") ?? []);

/** Effort by square and period and by period, samples, and squares covered under both rules. */
export function plainCoverage(used: readonly RecordRow[], rules: Rules): Record<string, Row[]> {
  const visits = visitsOf(used, rules);
  const inSquares = (records: readonly RecordRow[]) =>
    RESOLUTIONS.flatMap((resolution_m) =>
      [...group(records, (record) => squareOf(record, resolution_m))].map(([square, own]) => ({
        resolution_m,
        square,
        own,
      })),
    );
  return {
    square_effort: inSquares(used).flatMap(({ resolution_m, square, own }) =>
      [...Map.groupBy(own, ({ period }) => period)].map(([period, records]) => ({
        ...{ resolution_m, square, period, records: records.length },
        ...effortOf(visitsIn(records, visits)),
        taxa: fewest(namesOf(records), rules),
      })),
    ),
    period_effort: [...Map.groupBy(visits.values(), ({ period }) => period)].map(([period, own]) => ({
      period,
      without_recorder: own.filter(({ recorder }) => recorder === "").length,
      ...effortOf(own),
    })),
    square_samples: inSquares(used.filter(({ present, established }) => present && established !== false)).flatMap(
      ({ resolution_m, square, own }) =>
        [-1, ...rules.periods.keys()].flatMap((span) => {
          const sampled = own.filter(
            (record) => (span === -1 || record.period === span) && (visits.get(visitOf(record) ?? "")?.class ?? 3) < 2,
          );
          const sample = sampleOf(sampled, rules);
          const kept = sampled.length > 0 && (resolution_m === 10_000 || sample.visits >= 2);
          return kept ? [{ resolution_m, square, span, ...sample }] : [];
        }),
    ),
    coverage_rules: coverageRules(used, rules),
  };
}

function sampleOf(sampled: readonly RecordRow[], rules: Rules) {
  const names = namesOf(sampled);
  const taxa = [...names].filter(
    (name) => ![...names].some((other) => other !== name && upwards(other, rules).has(name)),
  );
  const times = taxa.map((taxon) => distinct(sampled.filter(({ taxon_id }) => taxon_id === taxon).map(visitOf)));
  return {
    visits: distinct(sampled.map(visitOf)),
    observed: taxa.length,
    once: times.filter((time) => time === 1).length,
    twice: times.filter((time) => time === 2).length,
    incidences: times.reduce((sum, time) => sum + time, 0),
    singles: taxa.filter((taxon) => sampled.filter(({ taxon_id }) => taxon_id === taxon).length === 1).length,
  };
}

function coverageRules(used: readonly RecordRow[], rules: Rules): Row[] {
  const [from, to] = rules.compared ?? [-1, rules.periods.length - 1];
  const telling = used.filter(
    (record) =>
      record.present && record.established !== false && !(rules.provisionalYears ?? []).includes(record.last_year),
  );
  const squares = RESOLUTIONS.flatMap((resolution_m) =>
    [...group(used, (record) => squareOf(record, resolution_m))].map(([square, own]) => {
      const visitsIn = (period: number) =>
        distinct(
          telling
            .filter((record) => squareOf(record, resolution_m) === square && record.period === period)
            .map(visitOf),
        );
      const territory = own.map((record) => record.territory).sort()[0] ?? "";
      return { resolution_m, territory, from: visitsIn(from), to: visitsIn(to) };
    }),
  );
  const territories = ["all", ...new Set(squares.map(({ territory }) => territory))];
  return RESOLUTIONS.flatMap((resolution_m) =>
    territories.flatMap((territory) =>
      [["in force", rules.minimumVisits] as const, ["stricter", rules.minimumVisits * 2] as const].flatMap(
        ([rule, least]) => {
          const own = squares.filter(
            (square) => square.resolution_m === resolution_m && (territory === "all" || square.territory === territory),
          );
          const two = rules.compared !== null;
          const count = (test: (square: (typeof own)[number]) => boolean) => own.filter(test).length;
          return own.length === 0
            ? []
            : [
                {
                  ...{ territory, resolution_m, rule, minimum_visits: least, squares: own.length },
                  covered_from: two ? count((square) => square.from >= least) : null,
                  covered_to: count((square) => square.to >= least),
                  covered_both: two ? count((square) => square.from >= least && square.to >= least) : null,
                },
              ];
        },
      ),
    ),
  );
}
