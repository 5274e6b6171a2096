import type { NarrowTaxon } from "./narrow-taxa.ts";
import { NEAR_STATES } from "./near-states.ts";
import { namedStates } from "./part-facts.ts";

/** Something a person can be asked about: one part of the body, or parts that are seen as one. */
export interface Question {
  /** The part's id, or one of its own. */
  readonly id: string;
  /** Parts it is about; an answer is held against each, and the mean counts. */
  readonly parts: readonly string[];
  /** Answers that are possible, in the order of the colours, then by letters. */
  readonly states: readonly string[];
}

/** Parts that people see as one thing. A body whose parts are not named here is asked about part by part. */
const SEEN_AS_ONE: readonly { readonly id: string; readonly parts: readonly string[] }[] = [
  { id: "tail", parts: ["T4", "T5", "T6"] },
];
/** Order of the questions: what most people see first; others follow by letters. */
const ORDER = ["tail", "collar", "mid-thorax", "hind-leg", "face", "T2", "wings", "rear-thorax", "T1", "T3"];
/** More words than this, colours not counted, are no answers to choose from but a description. */
const MOST_WORDS = 5;
/** Parts that are not answered with a word. */
const LEFT_OUT = new Set(["size"]);

/**
 * The questions that can tell the taxa of an atlas apart.
 *
 * @param taxa of `identify.json`
 * @returns those with at least two answers; parts described in free words are left out
 * @example questionsOf([redTailed, whiteTailed])[0] // { id: "tail", parts: ["T4", "T5", "T6"], states: ["white", "red"] }
 */
export function questionsOf(taxa: readonly Pick<NarrowTaxon, "characters">[]): Question[] {
  const states = namedStates(taxa);
  const joined = new Set(SEEN_AS_ONE.flatMap(({ parts }) => parts));
  const groups = [
    ...SEEN_AS_ONE,
    ...[...states.keys()].filter((part) => !joined.has(part) && !LEFT_OUT.has(part)).map((id) => ({ id, parts: [id] })),
  ];
  const questions = new Map<string, Question>();
  for (const { id, parts } of groups) {
    const own = [...new Set(parts.flatMap((part) => [...(states.get(part) ?? [])]))];
    const words = own.filter((state) => !NEAR_STATES.has(state));
    if (own.length < 2 || words.length > MOST_WORDS || questions.has(id)) continue;
    questions.set(id, { id, parts, states: own.sort(byColour) });
  }
  return [...questions.values()].sort((a, b) => placeOf(a.id) - placeOf(b.id) || (a.id < b.id ? -1 : 1));
}

function placeOf(id: string): number {
  const place = ORDER.indexOf(id);
  return place < 0 ? ORDER.length : place;
}

const COLOURS = [...NEAR_STATES.keys()];

function byColour(a: string, b: string): number {
  const [first, second] = [a, b].map((state) => COLOURS.indexOf(state) + 1 || COLOURS.length + 1) as [number, number];
  return first - second || (a < b ? -1 : 1);
}

/** Of how many questions the form begins with; the others are asked for, or named by what to look at next. */
const FIRST = 4;

/**
 * The questions most people can answer, and the others.
 *
 * @example askedFirst(questions)[0].map(({ id }) => id) // ["tail", "collar", "mid-thorax", "hind-leg"]
 */
export function askedFirst(questions: readonly Question[]): [first: Question[], more: Question[]] {
  const first = questions.filter(({ id }) => ORDER.slice(0, FIRST).includes(id));
  return first.length === 0
    ? [questions.slice(0, FIRST), questions.slice(FIRST)]
    : [first, questions.filter((one) => !first.includes(one))];
}
