import { say } from "../../words/say.ts";
import { inWords } from "../text/numbers.ts";
import type { Sentence } from "../text/sentences.ts";
import { capital, listed, small } from "../text/words.ts";
import { type Line, saysOf } from "./lines.ts";

/** What the sentence needs of a line. */
export type AgreementLine = Pick<Line, "name" | "direction" | "more" | "fewer" | "isCorrected" | "method">;

/**
 * Whether the lines of a species agree, in one or two sentences. Lines that are silent do not count; lines without a
 * direction neither agree nor disagree. A second sentence says so where nothing that speaks is corrected for recording.
 *
 * @param lines of one pair of periods; none gives an empty sentence
 * @example agreementSentence([]) // => ""
 */
export function agreementSentence(lines: readonly AgreementLine[]): Sentence {
  if (lines.length === 0) return "";
  const speaking = lines.filter(({ direction }) => direction !== null);
  if (speaking.length === 0) return say(lines.length === 1 ? "lines.one-silent" : "lines.all-silent");
  const start = speaking.length === 1 ? ofOne(speaking[0] as AgreementLine, lines.length) : ofSeveral(speaking);
  return [start, uncorrected(speaking)].filter(Boolean).join(" ");
}

function ofOne(line: AgreementLine, lines: number): Sentence {
  const says = saysOf(line);
  return lines === 1
    ? say("lines.alone", { name: line.name, says })
    : say("lines.one-speaks", { all: inWords(lines), name: small(line.name), says });
}

function ofSeveral(speaking: readonly AgreementLine[]): Sentence {
  const of = (wanted: string) => speaking.filter(({ direction }) => direction === wanted);
  const [more, fewer, none] = [of("more"), of("fewer"), of("none")];
  if (more.length > 0 && fewer.length > 0) return disagreement(more, fewer, none);
  const told = [...more, ...fewer];
  const all = inWords(speaking.length);
  if (told.length === 0) return say("lines.none-points", { all });
  const values = { told: told.length, words: capital(inWords(told.length)), all, says: shared(told) };
  if (none.length === 0) return say("lines.agree", values);
  return say("lines.agree-but-some", { ...values, silent: none.length, others: inWords(none.length) });
}

function disagreement(
  more: readonly AgreementLine[],
  fewer: readonly AgreementLine[],
  none: readonly AgreementLine[],
): Sentence {
  const by = (lines: readonly AgreementLine[]) => listed(lines.map(({ name }) => small(name)));
  const values = { more: shared(more), moreBy: by(more), fewer: shared(fewer), fewerBy: by(fewer) };
  return none.length === 0
    ? say("lines.disagree", values)
    : say("lines.disagree-but-some", { ...values, noneBy: by(none) });
}

/**
 * What lines of one direction say together, each in its own words: one word for all would make change of what is relative
 * to the group.
 */
function shared(lines: readonly AgreementLine[]): string {
  return listed([...new Set(lines.map(saysOf))]);
}

function uncorrected(speaking: readonly AgreementLine[]): Sentence {
  if (speaking.some(({ isCorrected }) => isCorrected)) return "";
  if (speaking.every(({ method }) => method === "squares_compared")) return say("lines.uncorrected-squares");
  return say(speaking.length === 1 ? "lines.uncorrected-one" : "lines.uncorrected-several");
}
