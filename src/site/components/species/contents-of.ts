import type { AtlasFile, TaxonFile, UseRow } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";

/** Account sections that stand inside another section of the page. */
const PLACED = new Set(["know", "when", "where", "habitat"]);

/**
 * The sections of a species page that have something to say, in the order a reader needs them.
 *
 * @param taxon whose page it is
 * @param surroundings what its records state of where it was
 * @param atlas which periods are compared
 * @returns anchor and words of each
 * @example contentsOf(taxon, [], atlas)[0] // ["know", "How to know it"]
 */
export function contentsOf(
  taxon: TaxonFile,
  surroundings: readonly UseRow[],
  { compared }: Pick<AtlasFile, "compared">,
): [id: string, words: string][] {
  const { account, characters, sizes, look_alikes, members, within, change, years, statuses } = taxon;
  const told = (wanted: string) => account.some(({ id }) => id === wanted);
  const known = characters.length + sizes.length > 0 || told("know");
  const lives = told("habitat") || surroundings.some(({ of_visit, judged }) => of_visit && judged);
  const sections: [isThere: boolean, id: string, words: string][] = [
    [known, "know", say("species.know")],
    [look_alikes.length + members.length + within.length > 0, "alike", say("species.alike-short")],
    [true, "when", say("species.when")],
    [true, "where", say("species.where")],
    [lives, "habitat", say("species.habitat")],
    [compared !== null && change.length > 0, "change", say("species.change")],
    [years.some(({ records }) => records > 0), "years", say("species.years")],
    ...account
      .filter(({ id }) => !PLACED.has(id))
      .map(({ id, title }): [boolean, string, string] => [true, `account-${id}`, title]),
    [statuses.length > 0, "lists", say("species.lists-short")],
    [true, "use", say("species.use")],
  ];
  return sections.flatMap(([isThere, id, words]) => (isThere ? [[id, words]] : []));
}
