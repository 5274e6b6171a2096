import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seeded } from "../../../../src/site/components/practice/seeded.ts";
import {
  afterAnswer,
  type Course,
  NEW_COURSE,
  nextQuestion,
  type Outcome,
  RETURN_AFTER,
} from "../../../../src/site/components/practice/spaced-return.ts";

const OUTCOMES: readonly Outcome[] = ["right", "near", "wrong"];
const idsOf = (count: number) => Array.from({ length: count }, (_, index) => `q${index}`);

/** Runs a course: what is asked, and the course after each answer. */
function run(ids: readonly string[], answers: (id: string, turn: number) => Outcome, turns: number, seed = 1) {
  let course: Course = NEW_COURSE;
  const asked: string[] = [];
  for (let turn = 0; turn < turns; turn += 1) {
    const id = nextQuestion(course, ids, seeded(seed + turn));
    if (id === undefined) break;
    asked.push(id);
    course = afterAnswer(course, id, answers(id, turn), ids);
  }
  return { asked, course };
}

describe("the course of questions", () => {
  it("brings a wrong answer back after 2, then 5, then 12 others, and then leaves it", () => {
    const ids = idsOf(40);
    let wrong = "";
    const { asked } = run(
      ids,
      (id, turn) => {
        if (turn === 0) wrong = id;
        return turn === 0 ? "wrong" : "right";
      },
      40,
    );
    const places = asked.flatMap((id, place) => (id === wrong ? [place] : []));
    expect(places).toEqual([0, 3, 9, 22]);
    expect(places.slice(1).map((place, index) => place - (places[index] ?? 0) - 1)).toEqual([...RETURN_AFTER]);
  });
  it("never asks the same twice in a row, and always asks one of the questions", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 12 }),
        fc.array(fc.constantFrom(...OUTCOMES), { minLength: 1, maxLength: 80 }),
        fc.nat(),
        (count, outcomes, seed) => {
          const ids = idsOf(count);
          const { asked } = run(ids, (_, turn) => outcomes[turn] ?? "right", outcomes.length, seed);
          expect(asked).toHaveLength(outcomes.length);
          for (const [place, id] of asked.entries()) {
            expect(ids).toContain(id);
            expect(id).not.toBe(asked[place - 1]);
          }
        },
      ),
    );
  });
  it("comes to rest when all is known: nothing waits for ever", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 12 }),
        fc.array(fc.constantFrom(...OUTCOMES), { maxLength: 40 }),
        (count, outcomes) => {
          const settled = outcomes.length + 30 * count;
          const { course } = run(idsOf(count), (_, turn) => outcomes[turn] ?? "right", settled);
          expect(course.waiting).toEqual([]);
        },
      ),
    );
  });
  it("shows every animal before it begins again", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.nat(), (count, seed) => {
        const { asked } = run(idsOf(count), () => "right", count, seed);
        expect(new Set(asked).size).toBe(count);
      }),
    );
  });
  it("asks one animal again where there is but one, and nothing where there is none", () => {
    expect(run(["a"], () => "wrong", 3).asked).toEqual(["a", "a", "a"]);
    expect(nextQuestion(NEW_COURSE, [], () => 0)).toBeUndefined();
  });
});
