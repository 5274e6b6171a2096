import { CONDITIONS, type Told, type Trial } from "./trials.ts";

/** What the helper says under one condition, as shares of all sightings. */
export interface Row extends Told {
  readonly sightings: number;
  readonly first: number;
  /** The true taxon is first, or the group that is offered holds it. */
  readonly first_or_group: number;
  readonly first_three: number;
  /** A wrong taxon is first with at least 9 in 10, and with at least 7 in 10. */
  readonly wrong_at_nine: number;
  readonly wrong_at_seven: number;
}

/** One tenth of the chances given to the first candidate: how many, and how many of them were right. */
export interface Tenth {
  readonly from: number;
  readonly sightings: number;
  readonly said: number;
  readonly right: number;
}

/** What became of one taxon's sightings, told 4 characters, place and date. */
export interface OfTaxon {
  readonly taxon: string;
  readonly sightings: number;
  readonly first: number;
  readonly first_or_group: number;
  readonly first_three: number;
}

/** The whole result. */
export interface Summary {
  readonly rows: readonly Row[];
  readonly tenths: readonly Tenth[];
  readonly taxa: readonly OfTaxon[];
  /** Of the groups that were offered, the share that held the truth, and the mean chance they were given. */
  readonly groups: { readonly offered: number; readonly right: number; readonly said: number };
}

/** @example summarise(trials).rows[0]?.first // 0.52 */
export function summarise(trials: readonly Trial[]): Summary {
  const rows = CONDITIONS.map((told) => {
    const own = trials.filter(
      (one) => one.characters === told.characters && one.place === told.place && one.date === told.date,
    );
    return { ...told, sightings: own.length, ...shares(own) };
  });
  const full = trials.filter(({ characters, place, date }) => characters === 4 && place && date);
  const offered = trials.filter(({ group }) => group !== "none");
  return {
    rows,
    tenths: tenthsOf(trials),
    taxa: [...Map.groupBy(full, ({ taxon }) => taxon)]
      .map(([taxon, own]) => {
        const { first, first_or_group, first_three } = shares(own);
        return { taxon, sightings: own.length, first, first_or_group, first_three };
      })
      .sort((a, b) => b.sightings - a.sightings || (a.taxon < b.taxon ? -1 : 1)),
    groups: {
      offered: offered.length,
      right: share(offered, ({ group }) => group === "right"),
      said: offered.length === 0 ? 0 : round(offered.reduce((sum, one) => sum + one.groupChance, 0) / offered.length),
    },
  };
}

function shares(own: readonly Trial[]) {
  return {
    first: share(own, ({ rank }) => rank === 1),
    first_or_group: share(own, ({ rank, group }) => rank === 1 || group === "right"),
    first_three: share(own, ({ rank }) => rank <= 3),
    wrong_at_nine: share(own, ({ rank, chance }) => rank > 1 && chance >= 0.9),
    wrong_at_seven: share(own, ({ rank, chance }) => rank > 1 && chance >= 0.7),
  };
}

function tenthsOf(trials: readonly Trial[]): Tenth[] {
  return Array.from({ length: 10 }, (_, i) => {
    const own = trials.filter(({ chance }) => Math.min(9, Math.floor(10 * chance)) === i);
    const said = own.length === 0 ? 0 : own.reduce((sum, { chance }) => sum + chance, 0) / own.length;
    return { from: i / 10, sightings: own.length, said: round(said), right: share(own, ({ rank }) => rank === 1) };
  });
}

function share(own: readonly Trial[], holds: (one: Trial) => boolean): number {
  return own.length === 0 ? 0 : round(own.filter(holds).length / own.length);
}

function round(number: number): number {
  return Math.round(10_000 * number) / 10_000;
}
