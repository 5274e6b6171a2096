import { readOccurrence } from "../../../src/names/occurrence.ts";
import type { Random } from "../../demonstration/random.ts";
import { cased, spoilt } from "../spoil.ts";
import type { Kind, Outcome } from "../trial.ts";

interface CountCase {
  individualCount: string;
  occurrenceStatus: string;
  /** False where a word was spoilt, which may leave another word of the standard. */
  isPlain: boolean;
}

const STATES: Readonly<Record<string, "present" | "absent">> = {
  ...{ "": "present", present: "present", detected: "present", absent: "absent", notdetected: "absent" },
};

/** Counts and statuses: zero, negative, huge, fractions, other figures; old and new words of the standard. */
export const counts: Kind<CountCase> = { name: "counts and statuses", share: 0.03, draw, judge };

function draw(random: Random): CountCase {
  const individualCount = random.pick([
    ...[
      "",
      "0",
      "00",
      "-1",
      "1.5",
      "1e3",
      "NaN",
      "Infinity",
      "٣",
      "５",
      "²",
      "1,000",
      "10+",
      ">5",
      "c. 20",
      "many",
      "9".repeat(400),
    ],
    ...[String(random.whole(0, 20)), String(random.whole(0, 1e9)), ` ${random.whole(1, 9)} `, spoilt(random, "12")],
  ]);
  const status = random.pick(["", "present", "absent", "detected", "notDetected", "0", "1", "yes", "presence"]);
  const isPlain = random.chance(0.8);
  const occurrenceStatus = isPlain ? cased(random, status) : spoilt(random, status);
  return { individualCount, occurrenceStatus, isPlain };
}

function judge({ individualCount, occurrenceStatus, isPlain }: CountCase): Outcome {
  const { status, count, problems } = readOccurrence({ individualCount, occurrenceStatus });
  const answer = status === undefined ? "refused" : "accepted";
  const figures = individualCount.replaceAll(/[\s"'_\u00AD\u200B-\u200F\u202A-\u202E\u2060\uFEFF]/gu, "");
  const isCount =
    figures.length < 10 && figures !== "" && [...figures].every((letter) => letter >= "0" && letter <= "9");
  const expected = isCount ? Number(figures) : undefined;
  if (count !== expected && !(count === undefined && figures !== individualCount.trim()))
    return { answer, wrong: `counts ${count}, not ${expected}` };
  if (!isPlain) return { answer };
  const stated = Object.hasOwn(STATES, occurrenceStatus.toLowerCase())
    ? STATES[occurrenceStatus.toLowerCase()]
    : undefined;
  const wanted = occurrenceStatus === "" && count === 0 ? undefined : stated;
  if (status !== wanted) return { answer, wrong: `status ${status}, not ${wanted}` };
  const contradicts = (wanted === "present" && count === 0) || (wanted === "absent" && (count ?? 0) > 0);
  const isTold = problems.some(({ code }) => code === "count_zero_but_present" || code === "count_but_absent");
  return contradicts === isTold ? { answer } : { answer, wrong: "a contradiction is not told, or told of nothing" };
}
