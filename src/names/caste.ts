import { type CasteCount, type CasteVocabulary, joinCounts, widerThan } from "./caste-classes.ts";
import { type CasteProblem, type ReadCaste, readCasteText } from "./caste-text.ts";
import { cleanName } from "./name-text.ts";

export type { CasteClass, CasteCount, CasteVocabulary } from "./caste-classes.ts";
export type { CasteProblem, ReadCaste } from "./caste-text.ts";

/** The class of records that do not say: a class of its own, never shared out. */
export const NOT_STATED = "not_stated";

/** The terms that say caste, as text; missing and empty mean the same. */
export interface CasteFields {
  readonly caste?: string | undefined;
  readonly sex?: string | undefined;
  readonly lifeStage?: string | undefined;
}

/**
 * Reads caste, sex and life stage through a vocabulary. A text may hold several counts ("1q 3w, m", "2 queens; 4
 * workers"), which are counts of one record. Terms that agree are joined, the finer class counting: female with worker
 * is worker, female alone stays female. Without anything stated, or with a contradiction, the one count is NOT_STATED.
 * `allowed` are the castes of the taxon; leave it out or empty where the checklist does not say.
 *
 * @example readCaste({ caste: "1q 3w, m" }, vocabulary) // { counts: [{ caste: "queen", count: 1 }, { caste: "worker", count: 3 }, { caste: "male", count: undefined }], problems: [] }
 */
export function readCaste(
  fields: CasteFields,
  vocabulary: CasteVocabulary,
  allowed: readonly string[] = [],
): ReadCaste {
  const problems: CasteProblem[] = [];
  let counts: CasteCount[] = [];
  for (const text of [fields.caste, fields.sex, fields.lifeStage]) {
    const read = readCasteText(cleanName(text ?? ""), vocabulary);
    problems.push(...read.problems);
    const joined = joinCounts(counts, read.counts, vocabulary);
    if (joined === undefined) {
      problems.push({
        code: "contradiction",
        found: `${listOf(counts)} and ${listOf(read.counts)} are stated of the same`,
      });
    }
    counts = joined ?? [];
  }
  const contradicts = problems.some(({ code }) => code === "contradiction");
  if (counts.length === 0 || contradicts) counts = [{ caste: NOT_STATED, count: undefined }];
  return { counts, problems: [...problems, ...notOfTaxon(counts, vocabulary, allowed)] };
}

function notOfTaxon(
  counts: readonly CasteCount[],
  vocabulary: CasteVocabulary,
  allowed: readonly string[],
): CasteProblem[] {
  if (allowed.length === 0) return [];
  const possible = new Set([NOT_STATED, ...allowed.flatMap((id) => [id, ...widerThan(id, vocabulary)])]);
  return counts
    .filter(({ caste }) => !possible.has(caste))
    .map(({ caste }) => ({ code: "caste_not_of_taxon", found: `${caste}, where the taxon has ${allowed.join(", ")}` }));
}

function listOf(counts: readonly CasteCount[]): string {
  return counts.map(({ caste, count }) => (count === undefined ? caste : `${count} ${caste}`)).join(", ");
}
