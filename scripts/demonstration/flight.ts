import type { Caste, Flight, Species } from "./species.ts";
import type { Surroundings } from "./surroundings.ts";
import type { TruthKind } from "./truth.ts";

const DAYS_A_MONTH = 30.4375;

/** What is needed to know how many of a caste are about. */
export interface Moment {
  readonly place: Surroundings;
  readonly year: number;
  /** 1 to 366. */
  readonly dayOfYear: number;
  readonly kind: TruthKind;
}

/**
 * How many of a caste are about, against its best day in this species, 0 to 1 (times the caste's own share).
 * Later by two days each 100 km north and by nine on high hills; in a changing truth earlier by five days
 * from 2006. Winter colonies and autumn queens fly in the warm south only.
 *
 * @example aboutOn(SPECIES[0], "queen", moment) // near 0.6 in early April in the south
 */
export function aboutOn(species: Species, caste: Caste, moment: Moment): number {
  const { place, year, dayOfYear, kind } = moment;
  const later = 0.02 * Math.max(0, place.y - 150) + 9 * place.height;
  const earlier = kind === "changing" && year >= 2006 ? 5 : 0;
  const month = 1 + (dayOfYear - later + earlier) / DAYS_A_MONTH;
  const main = species.flights[caste];
  const share = species.numbers?.[caste] ?? 1;
  const second = species.second?.[caste];
  const inWinter =
    second && place.warmth > 0.72 ? 0.6 * place.cover * about(second, month < 2 ? month + 12 : month) : 0;
  return share * ((main ? about(main, month) : 0) + inWinter);
}

function about([first, most, last]: Flight, month: number): number {
  const spread = month < most ? (most - first) / 2.1 : (last - most) / 2.1;
  const away = (month - most) / spread;
  return Math.abs(away) > 2.6 ? 0 : Math.exp((-away * away) / 2);
}
