/**
 * Which question comes next. What was not known comes back after 2 further questions, when it is answered then after 5,
 * then after 12: the same animal at growing distances, which is how names are kept longest. After Landauer and Bjork
 * (1978), Optimum rehearsal patterns and name learning (cited from memory); the distances themselves are our choice.
 */

/** Questions that come between, at each return. */
export const RETURN_AFTER = [2, 5, 12] as const;

/** A question that comes back. */
export interface Waiting {
  readonly id: string;
  /** Number of questions answered from which on it may come. */
  readonly at: number;
  /** Place in {@link RETURN_AFTER} of the distance it is waiting for. */
  readonly step: number;
}

/** What the device keeps: how many were answered, which come back, which were shown since the last round began. */
export interface Course {
  readonly answered: number;
  readonly waiting: readonly Waiting[];
  readonly seen: readonly string[];
  readonly last: string;
}

export const NEW_COURSE: Course = { answered: 0, waiting: [], seen: [], last: "" };

/** `near` is a true answer that says less than could be said. */
export type Outcome = "right" | "near" | "wrong";

/**
 * The next question: one that is due, the longest overdue first; else one not shown yet, by chance; when all were shown a
 * new round begins. Never the same twice in a row, unless there is but one.
 *
 * @param ids of all questions
 * @param random from 0 up to 1, of a seeded generator
 * @returns undefined without questions
 * @example nextQuestion({ ...NEW_COURSE, answered: 3, waiting: [{ id: "a", at: 3, step: 0 }] }, ["a", "b"], random) // "a"
 */
export function nextQuestion(course: Course, ids: readonly string[], random: () => number): string | undefined {
  const others = ids.filter((id) => id !== course.last);
  const open = others.length === 0 ? ids : others;
  const waiting = course.waiting.filter(({ id }) => open.includes(id)).sort((one, other) => one.at - other.at);
  const [due] = waiting.filter(({ at }) => at <= course.answered);
  if (due !== undefined) return due.id;
  const held = new Set(waiting.map(({ id }) => id));
  const fresh = open.filter((id) => !held.has(id) && !course.seen.includes(id));
  const again = fresh.length > 0 ? fresh : open.filter((id) => !held.has(id));
  return again.length > 0 ? again[Math.floor(random() * again.length)] : waiting[0]?.id;
}

/**
 * The course after an answer.
 *
 * @param ids of all questions: when all were shown, a new round begins
 * @example afterAnswer(NEW_COURSE, "a", "wrong", ["a", "b"]).waiting // [{ id: "a", at: 3, step: 0 }]
 */
export function afterAnswer(course: Course, id: string, outcome: Outcome, ids: readonly string[]): Course {
  const answered = course.answered + 1;
  const before = course.waiting.find((each) => each.id === id);
  const step = outcome === "wrong" ? 0 : outcome === "near" ? 1 : before === undefined ? undefined : before.step + 1;
  const distance = step === undefined ? undefined : RETURN_AFTER[step];
  const others = course.waiting.filter((each) => each.id !== id);
  const seen = [...new Set([...course.seen, id])].filter((each) => ids.includes(each));
  return {
    answered,
    waiting: step === undefined || distance === undefined ? others : [...others, { id, at: answered + distance, step }],
    seen: seen.length >= ids.length ? [] : seen,
    last: id,
  };
}
