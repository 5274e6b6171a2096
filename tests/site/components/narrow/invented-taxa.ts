import type { NarrowCharacter, NarrowTaxon } from "../../../../src/site/components/narrow/narrow-taxa.ts";

/** One row of the table of characters. */
export function row(part: string, state: string, more: Partial<NarrowCharacter> = {}): NarrowCharacter {
  return { castes: [], form: "", part, state, note: "", reliability: "supports", evidence: "sight", ...more };
}

/** A taxon without records, castes or characters unless they are given. */
export function taxon(slug: string, more: Partial<NarrowTaxon> = {}): NarrowTaxon {
  return {
    ...{ slug, name: `${slug} bee`, short: slug, scientific: `Apis ${slug}` },
    ...{ outside: false, aggregate: false, members: [], castes: [], characters: [], evidence: "" },
    ...{ season: new Array<number>(36).fill(0), seasons: [] },
    ...more,
  };
}

/** As many visits in each third of the month. */
export const EVEN: readonly number[] = new Array<number>(36).fill(99);
