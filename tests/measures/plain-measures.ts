/**
 * The measures worked out again, one record at a time, from their definitions: no SQL, no joins, nothing shared with
 * the program but the shape of a record. Slow and plain on purpose.
 */
import { plainCoverage } from "./coverage/plain-coverage.ts";
import { KINDS, type RecordRow, type Rules } from "./judged-records.ts";
import { plainChange } from "./plain-change.ts";
import { distinct, group, RESOLUTIONS, type Row, squareOf, upwards, visitOf } from "./plain-records.ts";

const least = (values: readonly (number | null)[]) => Math.min(...values.filter((value) => value !== null));
const firstYear = (records: readonly RecordRow[]) =>
  least(records.map((record) => record.first_year ?? record.last_year));
const lastYear = (records: readonly RecordRow[]) => Math.max(...records.map((record) => record.last_year));

/** Everything the database is asked for, by table. */
export function plainMeasures(all: readonly RecordRow[], rules: Rules): Record<string, Row[]> {
  const used = all.filter(({ status }) => status === "used");
  const taxa = Object.keys(rules.within);
  const of = (taxon: string) => used.filter((record) => record.present && upwards(record.taxon_id, rules).has(taxon));
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
    ...plainCoverage(used, rules),
    ...plainChange(used, rules),
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
  };
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

function seasonsAndYears(
  taxa: readonly string[],
  of: (taxon: string) => RecordRow[],
  used: readonly RecordRow[],
): Record<string, Row[]> {
  const castes = [...new Set(KINDS.flat())];
  // A specimen's date says when it was caught, not when its kind is about.
  const ofSeason = (taxon: string) => of(taxon).filter(({ source }) => source !== "museum");
  const ofCaste = (taxon: string, caste: string) =>
    ofSeason(taxon).filter(({ kind_id }) => KINDS[kind_id]?.includes(caste));
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
      byThird(ofSeason(taxon_id)).map(([third, records]) => ({
        taxon_id,
        third: Number(third),
        records: records.length,
      })),
    ),
    season_effort: byThird(used.filter((record) => record.source !== "museum" && visitOf(record) !== null)).map(
      ([third, records]) => ({
        third: Number(third),
        visits: distinct(records.map(visitOf)),
      }),
    ),
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
