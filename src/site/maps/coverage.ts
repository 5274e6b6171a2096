import type { AtlasFile, CoverageFile, CoverageRule } from "../../publishing/contracts.ts";
import { say } from "../words/say.ts";

/** Squares of one territory, or of all, and how many of them are covered under each rule, the one in force first. */
export interface TerritoryRules {
  readonly name: string;
  readonly squares: number;
  readonly rules: readonly CoverageRule[];
}

/**
 * How many squares of 10 km are covered in each territory under the rule in force and the stricter one, for a species
 * that was never recorded there.
 *
 * @param coverage the published counts
 * @param atlas its territories
 * @returns a row for each territory in the atlas's order that has a square, and one for all where there are several
 * @example territoryRules(coverage(), atlas()).at(-1)?.squares // => 3904
 */
export function territoryRules(
  { rules }: Pick<CoverageFile, "rules">,
  { territories }: Pick<AtlasFile, "territories">,
): TerritoryRules[] {
  const places = territories.length > 1 ? [...territories, { id: "all", name: say("maps.all") }] : territories;
  return places.flatMap(({ id, name }) => {
    const own = rules.filter(({ territory }) => territory === id);
    const [first] = own;
    return first === undefined ? [] : [{ name, squares: first.squares, rules: inOrder(own) }];
  });
}

function inOrder(rules: readonly CoverageRule[]): CoverageRule[] {
  return rules.toSorted((one, other) => Number(one.rule !== "in force") - Number(other.rule !== "in force"));
}
