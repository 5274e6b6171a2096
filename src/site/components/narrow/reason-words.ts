/** Reasons in the language of the page. */
import type { Say } from "../../words/client.ts";
import { partName, stateName } from "../identify/body-words.ts";
import type { Reason } from "./reasons.ts";

/** What words need beside the catalogue. */
export interface Speech {
  readonly say: Say;
  /** BCP 47 tag of the page. */
  readonly language: string;
  /** Name of a caste by its id, with a small letter. */
  readonly casteName: (caste: string) => string;
  /** How far a nearest square is looked for, in kilometres. */
  readonly nearestKm: number;
}

/**
 * One reason in words, without a closing point.
 *
 * @example reasonWords({ kind: "recorded-here", stand: "agrees", year: 2021 }, speech) // "recorded in this 10 km square in 2021"
 */
export function reasonWords(reason: Reason, speech: Speech): string {
  const { say, casteName, nearestKm } = speech;
  switch (reason.kind) {
    case "agree":
      return say("narrow.reason-agree", {
        n: reason.answers.length,
        list: listed(
          reason.answers.map(({ question, state }) => partIs(question, state, speech)),
          speech,
        ),
      });
    case "differs":
      return say("narrow.reason-differs", {
        part: partName(reason.question, say),
        state: stateName(reason.state, say),
        expected: listed(
          reason.expected.map((state) => stateName(state, say)),
          speech,
          "disjunction",
        ),
      });
    case "varies":
    case "not-told":
      return say(`narrow.reason-${reason.kind}`, { part: partName(reason.question, say) });
    case "caste":
      return say("narrow.reason-caste", { caste: casteName(reason.caste), said: casteName(reason.said) });
    case "in-season":
      return reason.caste === ""
        ? say("narrow.reason-in-season")
        : say("narrow.reason-in-season-caste", { caste: casteName(reason.caste) });
    case "out-of-season":
      return say("narrow.reason-out-of-season", {
        from: dayOf(reason.from, "first", speech.language),
        to: dayOf(reason.to, "last", speech.language),
      });
    case "recorded-here":
      return reason.year === undefined
        ? say("narrow.reason-here-once")
        : say("narrow.reason-here", { year: String(reason.year) });
    case "nearest":
      return say("narrow.reason-nearest", { km: reason.km });
    case "none-near":
      return say("narrow.reason-none-near", { km: nearestKm });
  }
}

/** Words in a row, as the language joins them. @example listed(["a", "b"], speech) // "a and b" */
export function listed(
  words: readonly string[],
  { language }: Pick<Speech, "language">,
  type: "conjunction" | "disjunction" = "conjunction",
): string {
  return new Intl.ListFormat(language, { type }).format(words);
}

/** A part with its state. @example partIs("tail", "red", speech) // "tail red" */
function partIs(part: string, state: string, { say }: Pick<Speech, "say">): string {
  return say("body.part-is", { part: partName(part, say), state: stateName(state, say) });
}

/**
 * The first or last day of a third of the month in words; the last third of February ends on the 28th.
 *
 * @param third 0 to 35
 * @example dayOf(14, "first", "en-GB") // "21 May"
 */
export function dayOf(third: number, end: "first" | "last", language: string): string {
  const [month, part] = [Math.floor(third / 3), third % 3];
  const day =
    end === "first" ? 10 * part + 1 : part < 2 ? 10 * part + 10 : new Date(Date.UTC(2001, month + 1, 0)).getUTCDate();
  const format = new Intl.DateTimeFormat(language, { day: "numeric", month: "long", timeZone: "UTC" });
  return format.format(new Date(Date.UTC(2001, month, day)));
}
