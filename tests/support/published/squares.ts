import type {
  ChangeRow,
  HectadSummary,
  SquareFile,
  TaxonFile,
  TaxonSquare,
  WantedFile,
} from "../../../src/publishing/contracts.ts";
import { total } from "./numbers.ts";

export function hectad(code: string, random: () => number, two: boolean): HectadSummary {
  const [first, second] = [...code.slice(0, 2)].map((letter) => {
    const index = letter.charCodeAt(0) - 65;
    return index > 7 ? index - 1 : index;
  }) as [number, number];
  const easting = (((first - 2) % 5) * 5 + (second % 5)) * 100_000 + Number(code[2]) * 10_000;
  const northing = (19 - Math.floor(first / 5) * 5 - Math.floor(second / 5)) * 100_000 + Number(code[3]) * 10_000;
  const visits = Array.from({ length: two ? 2 : 1 }, (_, period) =>
    Math.floor(random() ** 2 * (period === 0 ? 12 : 40)),
  );
  const taxa = visits.map((number) => Math.min(6, Math.ceil(number / 3)));
  return {
    square: code,
    slug: code.toLowerCase(),
    grid: "british",
    territory: "britain",
    crs: "EPSG:27700",
    easting,
    northing,
    latitude: Number((49.77 + northing / 111_300).toFixed(4)),
    longitude: Number((-2 + (easting - 400_000) / 64_000).toFixed(4)),
    on_land: true,
    visits,
    taxa,
    taxa_all: Math.max(...taxa),
    records: total(visits) * 2,
  };
}

function stateOf(records: readonly number[], covered: readonly boolean[], two: boolean): TaxonSquare["state"] {
  if (!two) return "recorded";
  const [before = 0, since = 0] = records;
  if (before > 0 && since > 0) return "retained";
  if (covered.every(Boolean)) return since > 0 ? "gained" : "lost";
  return since > 0 ? "not_comparable_since" : "not_comparable_before";
}

export function squaresOf(
  hectads: readonly HectadSummary[],
  frequency: number,
  random: () => number,
  two: boolean,
): TaxonSquare[] {
  return hectads.flatMap((square) => {
    const visits = square.visits.map((number) => Math.round(number * frequency * random() * 1.6));
    if (total(visits) === 0) return [];
    const covered = square.visits.map((number) => number >= 5);
    const records = visits.map((number) => number + Math.floor(random() * number));
    const first = (records[0] ?? 0) > 0 ? 1990 + Math.floor(random() * 16) : 2006 + Math.floor(random() * 10);
    const last = (records[1] ?? records[0] ?? 0) > 0 ? 2016 + Math.floor(random() * 9) : Math.min(2005, first + 4);
    return [
      {
        square: square.square,
        state: stateOf(records, covered, two),
        covered,
        records,
        visits,
        first_year: first,
        last_year: Math.max(first, last),
      },
    ];
  });
}

/** The squares of a taxon that was recorded in the later period alone. */
export function onlyLater(squares: readonly TaxonSquare[]): TaxonSquare[] {
  return squares.flatMap((square, index) => {
    const [, records = 0] = square.records;
    const [, visits = 0] = square.visits;
    if (records === 0) return [];
    const state = square.covered.every(Boolean) ? "gained" : "not_comparable_since";
    const first_year = 2006 + (index % 17);
    return [{ ...square, state, records: [0, records], visits: [0, visits], first_year, last_year: 2024 }];
  });
}

export function changeOf(
  squares: readonly TaxonSquare[],
  hectads: readonly HectadSummary[],
  territory: string,
  resolution: 10_000 | 2_000,
): ChangeRow {
  const of = (state: TaxonSquare["state"], both?: boolean) =>
    squares.filter((square) => square.state === state && (both === undefined || square.covered.every(Boolean) === both))
      .length;
  const [retained, gained, lost] = [of("retained", true), of("gained"), of("lost")];
  const comparable = retained + gained + lost;
  const recorded = new Set(squares.map(({ square }) => square));
  const blank = hectads
    .filter(({ square }) => !recorded.has(square))
    .map(({ visits }) => visits.filter((number) => number >= 5).length);
  const judged = resolution === 10_000 && comparable >= 20 && retained + lost > 0;
  const net = gained - lost;
  const half = Math.round(1.96 * Math.sqrt(gained + lost));
  return {
    resolution_m: resolution,
    territory,
    from_period: "p1",
    to_period: "p2",
    comparable,
    retained,
    gained,
    lost,
    net,
    net_percent: judged ? Math.round((net / (retained + lost)) * 1000) / 10 : null,
    interval_low: judged ? net - half : null,
    interval_high: judged ? net + half : null,
    minimum_visits: 5,
    turnover: judged ? Math.round(((gained + lost) / comparable) * 1000) / 10 : null,
    turnover_low: judged ? 0 : null,
    turnover_high: judged ? 100 : null,
    recorded_both_not_covered: of("retained", false),
    recorded_both_unsettled: 0,
    stricter: resolution === 10_000 ? stricterOf(comparable, net, half, judged) : null,
    not_comparable_since: of("not_comparable_since"),
    not_comparable_before: of("not_comparable_before"),
    covered_both_no_record: blank.filter((number) => number === 2).length,
    covered_one_no_record: blank.filter((number) => number === 1).length,
    covered_neither: blank.filter((number) => number === 0).length,
    judged,
    reason: judged
      ? ""
      : comparable >= 20
        ? "no square in the earlier period"
        : resolution === 10_000
          ? `${comparable} comparable squares; 20 are needed`
          : "too few records of the earlier period are precise to 2 km",
  };
}

/** The same under a rule of twice as many visits, which leaves two thirds of the squares and may leave too few. */
function stricterOf(all: number, net: number, half: number, judged: boolean): ChangeRow["stricter"] {
  const comparable = Math.floor((2 * all) / 3);
  const enough = judged && comparable >= 20;
  return {
    minimum_visits: 10,
    comparable,
    net: Math.trunc(net / 3),
    net_percent: enough ? Math.round((1000 * net) / 3 / comparable) / 10 : null,
    interval_low: enough ? Math.trunc(net / 3) - half : null,
    interval_high: enough ? Math.trunc(net / 3) + half : null,
    turnover: enough ? 9.5 : null,
    turnover_low: enough ? 6.2 : null,
    turnover_high: enough ? 13.8 : null,
    judged: enough,
    reason: enough ? "" : `${comparable} comparable squares; 20 are needed`,
  };
}

/** Every taxon without a record in the square, one of them recorded in the earlier period. */
function expectedOf({ square: code }: HectadSummary, taxa: readonly TaxonFile[]): SquareFile["expected"] {
  return taxa
    .filter(({ squares }) => squares["10000"].every(({ square }) => square !== code))
    .map(({ slug }, index) => ({
      ...{
        slug,
        chance: Math.max(100, 870 - 200 * index),
        squares_near: 20,
        squares_with: Math.max(2, 14 - 4 * index),
      },
      ...{ visits_here: 6 * index, last_year: index === 0 ? 1996 : null, months: [10, 24] as [number, number] },
    }));
}

/** The squares ranked, the first most wanted. */
export function wantedFile(hectads: readonly HectadSummary[], taxa: readonly TaxonFile[]): WantedFile {
  return {
    ...{ further_visits: 3, reach_km: 40, least_covered: 5 },
    squares: hectads.map(({ square, slug, territory, visits }, index) => ({
      ...{ square, slug, territory, regions: [], visits: visits.at(-1) ?? 0, rank: index + 1 },
      gain: Math.max(100, 4_700 - 350 * index),
      best_third: index % 3 === 0 ? null : 12 + (index % 12),
      likely: taxa.slice(0, 3).map(({ slug: taxon }) => taxon),
    })),
  };
}

export function squareFile(square: HectadSummary, taxa: readonly TaxonFile[]): SquareFile {
  return {
    ...square,
    taxa_list: taxa.flatMap(({ slug, squares }) => {
      const found = squares["10000"].find(({ square: code }) => code === square.square);
      return found === undefined
        ? []
        : [
            {
              slug,
              state: found.state,
              records: total(found.records),
              first_year: found.first_year,
              last_year: found.last_year,
            },
          ];
    }),
    tetrads: [..."ABCDEFGHIJKLMNPQRSTUVWXYZ"].slice(0, 12).map((letter, index) => ({
      square: `${square.square}${letter}`,
      letter,
      visits: index + 1,
      taxa: (index % 6) + 1,
      records: 2 * index + 2,
    })),
    years: [
      { year: 2010, records: 4, visits: 3 },
      { year: 2020, records: 6, visits: 4 },
    ],
    land_tetrads: "ABCDEFGHIJKLMNPQRSTU",
    regions: [],
    expected: expectedOf(square, taxa),
    wanted_rank: square.easting === 430_000 ? null : 1 + (square.northing % 7),
    wanted_gain: 1_240,
    wanted_third: 16,
  };
}
