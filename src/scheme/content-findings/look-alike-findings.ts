import type { CharacterRow, ChecklistRow } from "../content-tables.ts";
import type { Content } from "./content.ts";
import type { ContentFinding } from "./finding.ts";

/**
 * Look-alikes that only one account names, and look-alikes that nothing separates although no aggregate holds both.
 *
 * @example lookAlikeFindings(content).map(({ check }) => check) // ["look_alike_one_side"]
 */
export function lookAlikeFindings(content: Content): ContentFinding[] {
  const alike = new Map(
    [...content.accounts.values()].map(({ front }) => [
      front.taxonID,
      new Set(front.look_alikes.flatMap(({ taxonID, outside }) => taxonID ?? outside ?? [])),
    ]),
  );
  return [...content.accounts.values()].flatMap(({ file, front }) =>
    [...(alike.get(front.taxonID) ?? [])].flatMap((other) => {
      const at = (check: string, found: string, wayOut: string): ContentFinding => ({
        check,
        file,
        row: null,
        field: "look_alikes",
        value: other,
        found,
        wayOut,
      });
      const back = alike.get(other);
      // A member of a group stands for it: who reads of the member finds the group from there.
      const members = content.taxa.filter(({ within }) => within.includes(front.taxonID)).map(({ taxonID }) => taxonID);
      const oneSided = back !== undefined && ![front.taxonID, ...members].some((id) => back.has(id));
      const twins =
        (!(back?.has(front.taxonID) ?? false) || front.taxonID < other) && isInseparable(front.taxonID, other, content);
      return [
        ...(oneSided
          ? [
              at(
                "look_alike_one_side",
                "does not name this taxon in its own account",
                `add ${front.taxonID} there, or take it out here`,
              ),
            ]
          : []),
        ...(twins
          ? [
              at(
                "nothing_separates",
                "has no character that differs",
                "describe one, or put both within an aggregate to record",
              ),
            ]
          : []),
      ];
    }),
  );
}

/** Both are described, no part differs, and no aggregate holds both. */
function isInseparable(one: string, other: string, { characters, taxa }: Content): boolean {
  const of = (id: string) => characters.filter(({ taxonID, part }) => taxonID === id && part !== "size");
  const [first, second] = [of(one), of(other)];
  if (first.length === 0 || second.length === 0) return false;
  if (first.some((row) => second.some((there) => tellsApart(row, there)))) return false;
  const [above, aboveOther] = [withAggregates(one, taxa), withAggregates(other, taxa)];
  return ![...above].some((id) => aboveOther.has(id));
}

function tellsApart(row: CharacterRow, other: CharacterRow): boolean {
  const both =
    row.castes.length === 0 || other.castes.length === 0 || row.castes.some((caste) => other.castes.includes(caste));
  return (
    row.part === other.part &&
    row.form === "" &&
    other.form === "" &&
    both &&
    row.state !== other.state &&
    row.reliability !== "misleads" &&
    other.reliability !== "misleads"
  );
}

/** The taxon and all aggregates above it. */
function withAggregates(id: string, taxa: readonly ChecklistRow[]): Set<string> {
  const found = new Set([id]);
  for (const each of found)
    for (const above of taxa.find(({ taxonID }) => taxonID === each)?.within ?? []) found.add(above);
  return found;
}
