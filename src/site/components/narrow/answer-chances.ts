import type { NarrowCharacter } from "./narrow-taxa.ts";
import { NEAR_STATES, shadeOf } from "./near-states.ts";
import type { PartFact } from "./part-facts.ts";
import type { Question } from "./questions.ts";

/**
 * How often an answer about a part is not its state. What settles an identification is looked at on purpose and is
 * wrong about once in sixteen; a supporting character once in six, since light, wear and a moving animal deceive; one
 * that misleads is by its name hardly better than a guess between two, twice in five. Chosen before any trial.
 */
export const WRONG: Readonly<Record<NarrowCharacter["reliability"], number>> = {
  settles: 1 / 16,
  supports: 1 / 6,
  misleads: 2 / 5,
};
/** Of wrong answers, the share that names a state the true one is taken for; the rest may be any. */
const NEAR_SHARE = 3 / 4;
/** Of answers that are right but for the shade, the share that names the other shade of the colour. */
const SHADE_SHARE = 1 / 4;

/**
 * The chance of each answer to a question, given what the table says of its parts. A part that varies is in each of
 * its states as often as in the others; parts seen as one count as their mean.
 *
 * @param question its possible answers
 * @param facts of one taxon, caste and form, by part
 * @returns one chance an answer in the question's order, summing to 1; undefined where the table does not tell
 * @example answerChances({ id: "a", parts: ["a"], states: ["long", "short"] }, new Map([["a", { states: ["long"], varies: false, reliability: "settles", evidence: "sight" }]])) // [15/16, 1/16]
 */
export function answerChances(question: Question, facts: ReadonlyMap<string, PartFact>): number[] | undefined {
  const told = question.parts.flatMap((part) => {
    const fact = facts.get(part);
    return fact === undefined || fact.states.length === 0 ? [] : [chancesOf(question.states, fact)];
  });
  if (told.length === 0) return undefined;
  return question.states.map((_, i) => told.reduce((sum, chances) => sum + (chances[i] ?? 0), 0) / told.length);
}

function chancesOf(answers: readonly string[], { states, reliability }: PartFact): number[] {
  const wrong = WRONG[reliability];
  const chances = answers.map(() => 0);
  const add = (answer: string, chance: number) => {
    const i = answers.indexOf(answer);
    chances[i] = (chances[i] ?? 0) + chance / states.length;
  };
  for (const state of states) {
    const others = answers.filter((answer) => answer !== state);
    const near = others.filter((answer) => NEAR_STATES.get(state)?.includes(answer));
    const nearShare = near.length === 0 ? 0 : NEAR_SHARE;
    const right = others.length === 0 ? 1 : 1 - wrong;
    const shade = others.find((answer) => answer === shadeOf(state));
    add(state, shade === undefined ? right : right * (1 - SHADE_SHARE));
    if (shade !== undefined) add(shade, right * SHADE_SHARE);
    for (const answer of near) add(answer, (wrong * nearShare) / near.length);
    for (const answer of others) add(answer, (wrong * (1 - nearShare)) / others.length);
  }
  return chances;
}
