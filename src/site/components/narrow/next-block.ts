/** The block that says what to look at next, with what each answer would mean; its answers can be chosen there. */
import { partName, rowName, stateName } from "../identify/body-words.ts";
import { made, marked, swatchOf } from "./elements.ts";
import { UNSEEN } from "./known.ts";
import type { Meaning, NextLook } from "./look-next.ts";
import { listed, type Speech } from "./reason-words.ts";

/**
 * Fills the block.
 *
 * @param block emptied first
 * @param next undefined where nothing is expected to tell anything
 * @param choose is called with the question and the answer that is chosen
 */
export function showNext(
  block: HTMLElement,
  next: NextLook | undefined,
  {
    speech,
    choose,
    otherwise,
  }: { speech: Speech; choose: (question: string, state: string) => void; otherwise: string },
): void {
  const { say } = speech;
  if (next === undefined) {
    block.replaceChildren(
      ...[say("narrow.next-none"), otherwise].filter(Boolean).map((text) => made("p", {}, ...marked(text))),
    );
    return;
  }
  const part = partName(next.question.id, say);
  const segment = Number(/^[TS](\d+)$/.exec(part)?.[1] ?? 0);
  const answer = (state: string, words: string) => {
    const label = `${rowName(next.question.id, say)}: ${words}`;
    const button = made("button", { type: "button", "aria-label": label }, ...swatchOf(state), words);
    button.addEventListener("click", () => choose(next.question.id, state));
    return button;
  };
  block.replaceChildren(
    made("h3", { class: "say" }, ...marked(say("narrow.next", { part, segment }))),
    made(
      "ul",
      {},
      ...next.meanings.map((meaning) =>
        made(
          "li",
          {},
          ...meaning.states.map((state) => answer(state, stateName(state, say))),
          meaningWords(meaning, speech),
        ),
      ),
      made("li", {}, answer(UNSEEN, say("narrow.unseen"))),
    ),
    ...cautions(next, { part, segment }, speech).map((text) => made("p", { class: "note" }, text)),
  );
}

function meaningWords({ taxa }: Meaning, speech: Speech): string {
  if (taxa.length === 0) return speech.say("narrow.meaning-else");
  return speech.say("narrow.meaning", {
    taxa: listed(
      taxa.map(({ short }) => short),
      speech,
      "disjunction",
    ),
  });
}

function cautions({ failsFor, evidence }: NextLook, look: { part: string; segment: number }, speech: Speech): string[] {
  const { say } = speech;
  return [
    failsFor.length === 0
      ? ""
      : say("narrow.next-fails", {
          taxa: listed(
            failsFor.map(({ short }) => short),
            speech,
          ),
        }),
    evidence === "photograph" || evidence === "specimen" ? say(`narrow.next-${evidence}`, look) : "",
  ].filter(Boolean);
}
