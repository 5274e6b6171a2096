import { randomStream } from "../demonstration/random.ts";
import { type Kind, type Outcome, shown, type Tally } from "./trial.ts";

/** Longest processor time of this thread a single case may take, so that a busy machine is not blamed. */
export const LIMIT_MILLISECONDS = 5_000;
const MOST_SHOWN = 5;

/**
 * Tries a kind of input. Every case has a random stream of its own, so that case 31,415 of a seed is the same whether
 * the others are run or not.
 *
 * @param seed any whole number
 * @param from first case
 * @param to case after the last
 * @param tell called before each case
 * @returns what was tried; nothing is thrown
 * @example await runKind(references(), { seed: 7, from: 0, to: 1000 })
 */
export async function runKind(
  kind: Kind,
  { seed, from, to, tell = () => {} }: { seed: number; from: number; to: number; tell?: (index: number) => void },
): Promise<Tally> {
  const tally = emptyTally(kind.name);
  const began = performance.now();
  for (let index = from; index < to; index += 1) {
    tell(index);
    const input = kind.draw(randomStream(seed, `${kind.name} ${index}`));
    const start = processorMilliseconds();
    let outcome: Outcome | undefined;
    let problem: string | undefined;
    try {
      const answer = kind.judge(input);
      outcome = answer instanceof Promise ? await answer : answer;
      problem = outcome.wrong;
    } catch (error) {
      tally.crashed += 1;
      problem = `crashed: ${error instanceof Error ? error.stack : String(error)}`;
    }
    const milliseconds = processorMilliseconds() - start;
    count(tally, index, milliseconds, outcome);
    if (problem === undefined && milliseconds > LIMIT_MILLISECONDS) {
      tally.crashed += 1;
      problem = `took ${Math.round(milliseconds)} ms`;
    }
    if (problem !== undefined && tally.counterexamples.length < MOST_SHOWN)
      tally.counterexamples.push({ index, input: shown(input), problem });
  }
  tally.seconds = (performance.now() - began) / 1000;
  return tally;
}

function processorMilliseconds(): number {
  const { user, system } = process.threadCpuUsage();
  return (user + system) / 1000;
}

function emptyTally(name: string): Tally {
  const counts = { cases: 0, accepted: 0, refused: 0, undecided: 0, wrong: 0, crashed: 0 };
  return { name, ...counts, slowest: { milliseconds: 0, index: 0 }, seconds: 0, counterexamples: [] };
}

function count(tally: Tally, index: number, milliseconds: number, outcome: Outcome | undefined): void {
  tally.cases += 1;
  if (milliseconds > tally.slowest.milliseconds) tally.slowest = { milliseconds, index };
  if (outcome === undefined) return;
  tally[outcome.answer] += 1;
  if (outcome.undecided === true) tally.undecided += 1;
  if (outcome.wrong !== undefined) tally.wrong += 1;
}
