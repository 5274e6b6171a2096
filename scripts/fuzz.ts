/**
 * Tries a million and more invented references, coordinates, dates, names, castes, counts and damaged files on the
 * program, judges every answer by computations of its own, and prints what it tried. Ends with 1 where anything was
 * wrong, crashed or hung.
 *
 *   node scripts/fuzz.ts [--cases 1000000] [--seed 7] [--only dates] [--case 31415]
 */
import { parseArgs } from "node:util";
import { Worker } from "node:worker_threads";
import { LIMIT_MILLISECONDS } from "./fuzz/run-kind.ts";
import type { Tally } from "./fuzz/trial.ts";
import type { Work } from "./fuzz/worker.ts";

const COLUMNS = [20, 10, 10, 10, 11, 7, 8, 18, 9];
const said = (number: number) => number.toLocaleString("en-GB");

function line(...cells: (string | number)[]): void {
  const texts = cells.map((cell) => (typeof cell === "number" ? said(cell) : cell));
  console.log(
    texts.map((text, i) => (i === 0 ? text.padEnd(COLUMNS[0] ?? 0) : text.padStart(COLUMNS[i] ?? 0))).join(""),
  );
}

function report(tallies: readonly Tally[], seed: number): boolean {
  line("kind", "cases", "accepted", "refused", "undecided", "wrong", "crashed", "slowest", "seconds");
  for (const { name, cases, accepted, refused, undecided, wrong, crashed, slowest, seconds } of tallies) {
    const longest = `${slowest.milliseconds.toFixed(1)} ms (${slowest.index})`;
    line(name, cases, accepted, refused, undecided, wrong, crashed, longest, seconds.toFixed(1));
  }
  const sum = (of: (tally: Tally) => number) => tallies.reduce((total, tally) => total + of(tally), 0);
  const [wrong, crashed] = [sum(({ wrong }) => wrong), sum(({ crashed }) => crashed)];
  line(
    "all",
    ...[sum(({ cases }) => cases), sum(({ accepted }) => accepted), sum(({ refused }) => refused)],
    ...[sum(({ undecided }) => undecided), wrong, crashed, "", sum(({ seconds }) => seconds).toFixed(1)],
  );
  for (const { name, counterexamples } of tallies)
    for (const { index, input, problem } of counterexamples)
      console.log(
        `\n${name}, case ${index} of seed ${seed} (--only "${name}" --case ${index}):\n  ${input}\n  ${problem}`,
      );
  return wrong + crashed === 0;
}

const { values } = parseArgs({
  options: {
    cases: { type: "string", default: "1000000" },
    seed: { type: "string", default: "7" },
    only: { type: "string" },
    case: { type: "string" },
  },
});
const seed = Number(values.seed);
const heart = new Int32Array(new SharedArrayBuffer(8));
const work: Work = {
  cases: Number(values.cases),
  seed,
  only: values.only,
  single: values.case === undefined ? undefined : Number(values.case),
  heart,
};
const worker = new Worker(new URL("./fuzz/worker.ts", import.meta.url), { workerData: work });
const tallies: Tally[] = [];
let kinds: string[] = [];
worker.on("message", (message: { kinds?: string[]; tally?: Tally }) => {
  kinds = message.kinds ?? kinds;
  if (message.tally === undefined) return;
  tallies.push(message.tally);
  process.stderr.write(`${message.tally.name}: ${said(message.tally.cases)} cases tried\n`);
});
let last = { place: "", since: performance.now() };
const watch = setInterval(() => {
  const place = `${heart[0]} ${heart[1]}`;
  if (place !== last.place) last = { place, since: performance.now() };
  else if (kinds.length > 0 && performance.now() - last.since > 24 * LIMIT_MILLISECONDS) {
    console.log(`hangs: ${kinds[heart[0] ?? 0]}, case ${heart[1]} of seed ${seed}`);
    process.exit(1);
  }
}, 500);
worker.on("exit", (code) => {
  clearInterval(watch);
  process.exitCode = report(tallies, seed) && code === 0 ? 0 : 1;
});
