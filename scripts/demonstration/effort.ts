import { type Day, dayOf } from "./calendar.ts";
import { type Land, TETRAD, type Territory, type Tetrad } from "./land.ts";
import { drawFrom, type Random, runningTotals } from "./random.ts";
import type { People, Recorder, Site } from "./recorders.ts";
import type { Surroundings } from "./surroundings.ts";

/** One outing: one place, one day, one recorder. */
export interface Outing {
  readonly recorder: Recorder;
  readonly tetrad: Tetrad;
  readonly site: Site | undefined;
  readonly day: Day;
  readonly hours: number;
}

/** Share of visits in each month: most in summer, a few in winter. */
const MONTHS = runningTotals([1.4, 2, 5.5, 10, 15, 18, 20, 16, 8.5, 3.5, 1.6, 1.3]);

/** Chooses who goes out, when and where. */
export class Effort {
  readonly #land: Land;
  readonly #people: People;
  readonly #charms: readonly number[];
  readonly #active = new Map<number, { recorders: Recorder[]; totals: Float64Array }>();

  constructor(land: Land, people: People, places: readonly Surroundings[]) {
    this.#land = land;
    this.#charms = places.map(({ flowers, coast, height }) => flowers + 0.5 * coast + 0.8 * height);
    this.#people = people;
  }

  /**
   * A recorder who is active in a year; the Irish and the northern ones are fewer before 2006.
   *
   * @param year from 1960
   */
  recorder(year: number, random: Random): Recorder {
    let found = this.#active.get(year);
    if (!found) {
      const recorders = this.#people.recorders.filter(({ from, to }) => from <= year && year <= to);
      found = { recorders, totals: runningTotals(recorders.map((one) => one.activity * regionShare(one, year))) };
      this.#active.set(year, found);
    }
    return found.recorders[drawFrom(found.totals, random)] as Recorder;
  }

  /** A walk: mostly near home, sometimes to a named site, on holiday or to a square nobody has been to. */
  walk(year: number, random: Random): Outing {
    const recorder = this.recorder(year, random);
    const where = random.next();
    const site = where < 0.14 ? this.#siteFor(recorder, random) : undefined;
    const tetrad = site
      ? this.#partOf(site, random)
      : where < (year < 2006 ? 0.86 : 0.72)
        ? this.near(recorder, 22_000, random)
        : this.#away(recorder, year, random);
    return { recorder, tetrad, site, day: randomDay(year, random), hours: 0.25 + random.exponential(0.6) };
  }

  /** A land square at an exponential distance from a recorder's home. */
  near({ town }: Recorder, metres: number, random: Random): Tetrad {
    const { territory, easting, northing } = town.tetrad;
    for (let i = 0; i < 20; i++) {
      const distance = random.exponential(metres);
      const direction = 2 * Math.PI * random.next();
      const east = easting + TETRAD / 2 + distance * Math.cos(direction);
      const found = this.#land.tetradAt(territory, east, northing + TETRAD / 2 + distance * Math.sin(direction));
      if (found) {
        return found;
      }
    }
    return town.tetrad;
  }

  /** The square somebody walks in on a site: often another one than that of its label point. */
  #partOf({ tetrad, easting, northing, reach }: Site, random: Random): Tetrad {
    const east = easting + random.between(-reach, reach);
    return this.#land.tetradAt(tetrad.territory, east, northing + random.between(-reach, reach)) ?? tetrad;
  }

  #siteFor(recorder: Recorder, random: Random): Site | undefined {
    const { x, y } = recorder.town.tetrad;
    const site = random.pick(this.#people.sites);
    const distance = Math.hypot(site.tetrad.x - x, site.tetrad.y - y);
    return random.chance(Math.exp(-distance / 120)) ? site : undefined;
  }

  /** Anywhere on land, oftener where flowers, coast or hills are; in the earlier years seldom far off or across the sea. */
  #away(recorder: Recorder, year: number, random: Random): Tetrad {
    const first = random.pick(this.#land.tetrads);
    const other = random.pick(this.#land.tetrads);
    const isOtherFiner = (this.#charms[other.index] as number) > (this.#charms[first.index] as number);
    const found = isOtherFiner && random.chance(0.7) ? other : first;
    const isFar =
      found.territory !== recorder.town.tetrad.territory || Math.abs(found.y - recorder.town.tetrad.y) > 300;
    return isFar && random.chance(year < 2006 ? 0.75 : 0.4) ? this.near(recorder, 45_000, random) : found;
  }
}

/** A day of a year, most in summer. @example randomDay(1970, random) // from 0 to 364 */
export function randomDay(year: number, random: Random): Day {
  const month = drawFrom(MONTHS, random) + 1;
  return random.whole(dayOf(year, month, 1), dayOf(year, month + 1, 1) - 1);
}

function regionShare({ town }: Recorder, year: number): number {
  const grown = Math.max(0, Math.min(1, (year - 1995) / 18));
  const shares: Readonly<Record<Territory, number>> = { britain: 1, ireland: 0.3 + 0.8 * grown, "channel-islands": 1 };
  return (
    shares[town.tetrad.territory] *
    (town.tetrad.y > 550 && town.tetrad.territory === "britain" ? 0.45 + 0.55 * grown : 1)
  );
}

/**
 * How the rows of a source spread over years.
 *
 * @param rows rows in all
 * @param from first year
 * @param to last year, included
 * @param growth last year's rows against the first's; 2024 is short, as records come in late
 * @returns years with a whole number of rows each, adding up to `rows` within one a year
 * @example spreadOverYears(30, 2001, 2003, 1).get(2001) // 10
 */
export function spreadOverYears(rows: number, from: number, to: number, growth: number): Map<number, number> {
  const years = Array.from({ length: to - from + 1 }, (_, i) => from + i);
  const weight = (year: number): number =>
    growth ** (to === from ? 0 : (year - from) / (to - from)) * (year === 2024 ? 0.55 : 1);
  const total = years.reduce((sum, year) => sum + weight(year), 0);
  return new Map(years.map((year) => [year, Math.round((rows * weight(year)) / total)]));
}
