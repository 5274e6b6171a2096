import { BODY_PLANS, OTHER_PARTS } from "../body-plans.ts";
import { type Content, describedTaxa } from "./content.ts";
import type { ContentFinding } from "./finding.ts";

/** What can show a character. */
const EVIDENCE = ["sight", "photograph", "specimen"];
/** Letters that a word may have to fit a cell of the ribbon on a telephone. */
const MOST_LETTERS = 8;

/**
 * Characters that do not keep their contract: unknown parts, castes the taxon lacks, words too long for a cell, parts
 * that vary without saying between what, evidence that is none.
 *
 * @example characterFindings(content).map(({ check }) => check) // ["unknown_part"]
 */
export function characterFindings(content: Content): ContentFinding[] {
  const taxa = describedTaxa(content);
  return content.characters.flatMap((character) => {
    const taxon = taxa.get(character.taxonID);
    if (taxon === undefined) return [];
    const rows: readonly string[] = Object.hasOwn(BODY_PLANS, taxon.plan)
      ? BODY_PLANS[taxon.plan as keyof typeof BODY_PLANS]
      : [];
    const at = (check: string, field: string, value: string, found: string, wayOut: string): ContentFinding => ({
      check,
      file: "characters.csv",
      row: character.row,
      field,
      value,
      found,
      wayOut,
    });
    const isDrawn = rows.some((id) => id.toLowerCase() === character.part.toLowerCase());
    return [
      ...unknownPart(character.part, isDrawn, rows, at),
      ...strayCastes(character.castes, taxon, at),
      ...(isDrawn ? wordsOfCell(character, at) : []),
      ...(character.evidence === "" || EVIDENCE.includes(character.evidence)
        ? []
        : [at("unknown_evidence", "evidence", character.evidence, "is not known", `write ${EVIDENCE.join(", ")}`)]),
    ];
  });
}

type At = (check: string, field: string, value: string, found: string, wayOut: string) => ContentFinding;

/** A scheme without a body plan names its parts as it likes. */
function unknownPart(part: string, isDrawn: boolean, rows: readonly string[], at: At): ContentFinding[] {
  if (isDrawn || rows.length === 0 || (OTHER_PARTS as readonly string[]).includes(part.toLowerCase())) return [];
  const wayOut = `write one of ${rows.join(", ")}, or of ${OTHER_PARTS.join(", ")}`;
  return [at("unknown_part", "part", part, "is no part that is looked at", wayOut)];
}

function strayCastes(
  castes: readonly string[],
  { name, castes: own }: { name: string; castes: readonly string[] },
  at: At,
): ContentFinding[] {
  if (own.length === 0) return [];
  return castes
    .filter((caste) => !own.includes(caste))
    .map((caste) => at("caste_not_of_taxon", "castes", caste, `is no caste of ${name}`, `write ${own.join(" | ")}`));
}

function wordsOfCell({ state, note }: { state: string; note: string }, at: At): ContentFinding[] {
  const long = state.match(/[\p{L}-]+/gu)?.find((word) => word.length > MOST_LETTERS);
  if (long !== undefined) {
    const wayOut = "find a shorter word, and say the rest in the note";
    return [at("long_state", "state", state, `has a word of more than ${MOST_LETTERS} letters`, wayOut)];
  }
  if (state !== "varies" || /^[\p{L}-]+ or [\p{L}-]+/u.test(note)) return [];
  return [
    at("varies_unsaid", "state", state, "does not say between what", "begin the note with both, “yellow or black”"),
  ];
}
