/** Everything right of the form: the sentence, what to look at next, candidates, where to stop. */
import type { AroundSquare } from "./around-square.ts";
import { candidateRow, type RowContext, shortRow } from "./candidate-rows.ts";
import { marked } from "./elements.ts";
import type { Frequencies } from "./encounter-rates.ts";
import { answersOf, type Known } from "./known.ts";
import { lookNext } from "./look-next.ts";
import { type Helper, weigh } from "./narrow.ts";
import { showNext } from "./next-block.ts";
import { LIKELY, type Outcome, outcomeOf } from "./outcome.ts";
import type { PageData } from "./page-data.ts";
import type { Speech } from "./reason-words.ts";
import { reasonsFor } from "./reasons.ts";
import { thirdOf } from "./season-shares.ts";
import { showStop } from "./stop-block.ts";

/** What the result is made from. */
export interface Shown {
  readonly helper: Helper;
  readonly known: Known;
  /** Undefined where no place is told, or its table is not there yet. */
  readonly around: AroundSquare | undefined;
  readonly everywhere: Frequencies;
  readonly page: PageData;
  readonly speech: Speech;
  readonly choose: (question: string, state: string) => void;
}

/** At least this many candidates are shown with their reasons, and at most that many. */
const [FEWEST, MOST] = [3, 8];

/** Shows the result of what is known. */
export function showResult(shown: Shown): void {
  const { helper, known, around, everywhere, page, speech, choose } = shown;
  const [answers, third] = [answersOf(known), thirdOf(known.date)];
  const weighed = weigh(
    helper,
    { frequencies: around?.frequencies ?? everywhere, visits: page.visits, third },
    answers,
  );
  const outcome = outcomeOf(helper, weighed);
  const [first] = outcome.candidates;
  const context: RowContext = {
    speech,
    addresses: page.addresses,
    first,
    third,
    reasons: (candidate) =>
      reasonsFor(helper, candidate, {
        answers,
        visits: page.visits,
        third,
        nearby: around?.nearby.get(candidate.taxon.slug),
      }),
  };
  at("narrow-say").replaceChildren(...marked(sentence(outcome, known, speech)));
  const next = lookNext(helper, weighed, new Set(known.states.keys()));
  const evidence = first === undefined || first.taxon.evidence === "" ? "" : first.taxon.evidence;
  const otherwise =
    evidence === "" ? "" : speech.say("narrow.next-none-evidence", { name: first?.taxon.short ?? "", evidence });
  showNext(at("narrow-next"), next, { speech, choose, otherwise });
  showCandidates(outcome, context);
  showStop(at("narrow-stop"), outcome, { speech, page });
}

function sentence({ likely, candidates }: Outcome, { states, caste, square, date }: Known, { say }: Speech): string {
  const told = states.size > 0 || caste !== "";
  if (!told)
    return say("narrow.nothing-told", { place: square === "" ? "no" : "yes", date: date === "" ? "no" : "yes" });
  const [first, second] = candidates;
  const ahead = likely > 1 && (first?.chance ?? 0) >= 3 * (second?.chance ?? 0);
  return say("narrow.remain", { likely, all: candidates.length, ahead: ahead ? "yes" : "no" });
}

function showCandidates({ candidates }: Outcome, context: RowContext): void {
  const likely = candidates.filter(({ chance }) => chance >= LIKELY).length;
  const count = Math.min(MOST, Math.max(FEWEST, likely));
  at("narrow-list").replaceChildren(...candidates.slice(0, count).map((candidate) => candidateRow(candidate, context)));
  const rest = candidates.slice(count);
  at("narrow-others").hidden = rest.length === 0;
  at("narrow-others-count").textContent = context.speech.say("narrow.others", { n: rest.length });
  at("narrow-others-list").replaceChildren(...rest.map((candidate) => shortRow(candidate, context)));
}

function at(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`no element ${id}`);
  return found;
}
