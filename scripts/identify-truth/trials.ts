import { helperOf, weigh } from "../../src/site/components/narrow/narrow.ts";
import { leafMembers } from "../../src/site/components/narrow/narrow-taxa.ts";
import { outcomeOf } from "../../src/site/components/narrow/outcome.ts";
import { thirdOf } from "../../src/site/components/narrow/season-shares.ts";
import { randomStream } from "../demonstration/random.ts";
import { inventWorld } from "../demonstration/world.ts";
import { newSightings } from "./sightings.ts";
import type { Tables } from "./tables.ts";
import { casteSaid, whatIsSeen } from "./what-is-seen.ts";

/** What the helper is told. */
export interface Told {
  readonly characters: number;
  readonly place: boolean;
  readonly date: boolean;
}

/** One run of the helper on one sighting. */
export interface Trial extends Told {
  /** Slug of the true taxon. */
  readonly taxon: string;
  readonly outside: boolean;
  /** Place of the true taxon in the list, from 1. */
  readonly rank: number;
  /** Chance given to the first. */
  readonly chance: number;
  /** Whether a group was offered, and whether it holds the truth. */
  readonly group: "none" | "right" | "wrong";
  readonly groupChance: number;
}

/** What is told in the tables that are printed: 0, 2 and 4 characters, with and without place and date. */
export const CONDITIONS: readonly Told[] = [0, 2, 4].flatMap((characters) =>
  [
    [true, true],
    [true, false],
    [false, true],
    [false, false],
  ].map(([place = false, date = false]) => ({ characters, place, date })),
);

/**
 * Runs the helper on new sightings under every condition.
 *
 * @param tables made from the demonstration of the same seed
 */
export function runTrials(tables: Tables, { seed, count }: { seed: number; count: number }): Trial[] {
  const helper = helperOf(tables.taxa);
  const bySlug = new Map(tables.taxa.map((taxon) => [taxon.slug, taxon]));
  const sightings = newSightings(inventWorld(seed, "changing"), { seed, count, outside: tables.outside });
  return sightings.flatMap((sighting, i) => {
    const slug = tables.slugOf.get(sighting.taxonId) ?? "";
    const taxon = bySlug.get(slug);
    if (taxon === undefined) throw new Error(`no published taxon for ${sighting.taxonId}`);
    return CONDITIONS.map((told): Trial => {
      const random = randomStream(seed, `what is seen of sighting ${i}`);
      const caste = casteSaid(sighting.caste, tables.castes, random);
      const states = whatIsSeen(taxon.characters, sighting, helper.questions, told.characters, random);
      const weighed = weigh(
        helper,
        {
          frequencies: tables.frequencies(told.place ? sighting : undefined),
          visits: tables.visits,
          third: told.date ? thirdOf(sighting.date) : undefined,
        },
        { caste: told.characters === 0 ? undefined : caste, states },
      );
      const { candidates, group } = outcomeOf(helper, weighed);
      const holds = group !== undefined && leafMembers(tables.taxa, group.taxon).includes(slug);
      return {
        ...told,
        taxon: slug,
        outside: taxon.outside,
        rank: candidates.findIndex((one) => one.taxon.slug === slug) + 1,
        chance: candidates[0]?.chance ?? 0,
        group: group === undefined ? "none" : holds ? "right" : "wrong",
        groupChance: group?.chance ?? 0,
      };
    });
  });
}
