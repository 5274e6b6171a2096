import type { Random } from "../demonstration/random.ts";

/** What came of one case. A wrong answer says what was expected; "undecided" lies too near a line for the other computation to tell. */
export interface Outcome {
  answer: "accepted" | "refused";
  /** Why it is wrong; left out where it is right. */
  wrong?: string;
  undecided?: boolean;
}

/** One kind of input: how a case is drawn, and how the program's answer is judged without the program's own code. */
export interface Kind<Input = unknown> {
  name: string;
  /** Share of all cases. */
  share: number;
  draw(random: Random): Input;
  judge(input: Input): Outcome | Promise<Outcome>;
}

/** What was tried of one kind. */
export interface Tally {
  name: string;
  cases: number;
  accepted: number;
  refused: number;
  undecided: number;
  wrong: number;
  crashed: number;
  /** Most processor time of a single case in milliseconds, and its number. */
  slowest: { milliseconds: number; index: number };
  seconds: number;
  /** The first few inputs that went wrong, with what went wrong. */
  counterexamples: { index: number; input: string; problem: string }[];
}

/** An input in words, short enough to print. */
export function shown(input: unknown): string {
  const text = JSON.stringify(input) ?? String(input);
  return text.length > 400 ? `${text.slice(0, 400)}… (${text.length} characters)` : text;
}
