import type { Question } from "./questions.ts";
import { seeded, shuffled } from "./seeded.ts";

/** Figures on a sheet: two columns of six fit a page. */
const ON_SHEET = 12;

/**
 * Questions of a printed sheet: of every group by first sight in turn, taxa before a second caste of one, mixed. The same
 * edition gives the same sheet.
 *
 * @param seed any text, such as the edition
 * @returns at most twelve
 * @example sheetQuestions(questions, "2025.1").length // 12
 */
export function sheetQuestions(questions: readonly Question[], seed: string): Question[] {
  const random = seeded([...seed].reduce((sum, sign) => Math.imul(sum, 31) + (sign.codePointAt(0) ?? 0), 7));
  const groups = new Map<string, Question[]>();
  for (const question of shuffled(questions, random)) {
    const key = question.taxon.outside ? "outside" : question.taxon.firstSeen;
    groups.set(key, [...(groups.get(key) ?? []), question]);
  }
  const chosen: Question[] = [];
  const shown = new Set<string>();
  for (const again of [false, true]) {
    for (let turn = 0; turn < questions.length && chosen.length < ON_SHEET; turn += 1)
      for (const group of groups.values()) {
        const next = group.find((each) => !chosen.includes(each) && (again || !shown.has(each.taxon.slug)));
        if (next === undefined || chosen.length === ON_SHEET) continue;
        chosen.push(next);
        shown.add(next.taxon.slug);
      }
  }
  return shuffled(chosen, random);
}
