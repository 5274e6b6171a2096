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
  if (speaking.length === 0)
    return lines.length === 1 ? "The one line **cannot judge it**." : "None of the lines **can judge it**.";
  const start = speaking.length === 1 ? ofOne(speaking[0] as AgreementLine, lines.length) : ofSeveral(speaking);
  return `${start}${uncorrected(speaking)}`;
}

function ofOne(line: AgreementLine, lines: number): Sentence {
  const says = line.direction === "none" ? "shows **no direction**" : `shows **${saysOf(line)}**`;
  if (lines === 1) return `${line.name}: it ${says}.`;
  return `One of ${inWords(lines)} lines speaks, ${small(line.name)}, and ${says}.`;
}

function ofSeveral(speaking: readonly AgreementLine[]): Sentence {
  const of = (wanted: string) => speaking.filter(({ direction }) => direction === wanted);
  const [more, fewer, none] = [of("more"), of("fewer"), of("none")];
  if (more.length > 0 && fewer.length > 0) return disagreement(more, fewer, none);
  const told = [...more, ...fewer];
  const all = inWords(speaking.length);
  if (told.length === 0)
    return `None of the ${all} lines that speak shows **a direction**: each interval includes no change.`;
  const start = `${capital(inWords(told.length))} of ${all} lines that speak ${told.length === 1 ? "shows" : "show"} **${shared(told)}**`;
  if (none.length === 0) return `${start}.`;
  return `${start}; ${inWords(none.length)} ${none.length === 1 ? "shows" : "show"} no direction.`;
}

function disagreement(
  more: readonly AgreementLine[],
  fewer: readonly AgreementLine[],
  none: readonly AgreementLine[],
): Sentence {
  const by = (lines: readonly AgreementLine[]) => `(${listed(lines.map(({ name }) => small(name)))})`;
  const rest = none.length === 0 ? "" : `; no direction ${by(none)}`;
  return `The lines **disagree**: **${shared(more)}** ${by(more)}, **${shared(fewer)}** ${by(fewer)}${rest}.`;
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
  const raw = speaking.every(({ method }) => method === "squares_compared");
  if (raw) return " That line is **not corrected for recording**.";
  return speaking.length === 1
    ? " It is **not shown to correct for recording**."
    : " None of them is **shown to correct for recording**.";
}
