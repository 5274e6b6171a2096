/** Practice in the browser: one animal at a time, answered, explained, and brought back when it was not known. */
import { pageWords } from "../../words/client.ts";
import { showMarks } from "../../words/fallback.ts";
import type { IdentifyTaxon } from "../identify/identify-taxa.ts";
import { pageFacts, wordingInBrowser } from "../tell-apart/browser-wording.ts";
import { judgementSaid, type Known, lookAlikeOf, reasonHtml } from "./explanation.ts";
import { partsWithin } from "./parts-within.ts";
import { deviceStorage, forgetCourse, keepCourse, readCourse } from "./progress.ts";
import { choiceFields, questionFacts, questionFigure } from "./question-html.ts";
import { judged, type Question, questionsOf } from "./questions.ts";
import { seeded } from "./seeded.ts";
import { afterAnswer, nextQuestion } from "./spaced-return.ts";

const page = document.querySelector<HTMLElement>("#practice");
if (page) void start(page);

async function start(page: HTMLElement): Promise<void> {
  const facts = pageFacts();
  const says = pageWords();
  const storage = deviceStorage();
  const part = <T extends HTMLElement>(name: string) => page.querySelector<T>(`[data-part="${name}"]`) as T;
  const said = part("said");
  let all: IdentifyTaxon[];
  try {
    all = (await (await fetch(facts.taxa)).json()) as IdentifyTaxon[];
  } catch {
    said.textContent = says("practice.failed");
    return;
  }
  const known: Known = { all, castes: facts.castes, wording: wordingInBrowser(facts, says) };
  const questions = new Map(questionsOf(all, facts.castes).map((question) => [question.id, question]));
  const within = partsWithin(all);
  const ids = [...questions.keys()];
  let course = readCourse(storage, () => crypto.getRandomValues(new Uint32Array(1))[0] ?? 1);
  let question: Question | undefined;
  const html = (element: HTMLElement, text: string) => {
    element.innerHTML = showMarks(text);
  };
  const tellWaiting = () => {
    part("device").textContent = says("practice.device", { n: course.waiting.length });
  };
  const ask = () => {
    const id = nextQuestion(course, ids, seeded(course.seed + course.answered));
    question = id === undefined ? undefined : questions.get(id);
    if (question === undefined) return;
    html(part("figure"), questionFigure(question, known.wording));
    html(
      part("facts"),
      questionFacts(question, within, known.wording)
        .map((line) => `<li>${line}</li>`)
        .join(""),
    );
    html(part("choices"), choiceFields(question));
    html(said, "");
    html(part("why"), "");
    part("answer").hidden = false;
    part("next").hidden = true;
    page.hidden = false;
  };
  const answer = () => {
    const picked = page.querySelector<HTMLInputElement>("input[name=answer]:checked")?.value;
    const chosen = all.find(({ slug }) => slug === picked);
    if (question === undefined || chosen === undefined) {
      said.textContent = says("practice.choose");
      return;
    }
    const judgement = judged(question, chosen, all);
    course = { ...course, ...afterAnswer(course, question.id, judgement === "more" ? "wrong" : judgement, ids) };
    keepCourse(storage, course);
    const back = course.waiting.find(({ id }) => id === question?.id);
    const returns = back === undefined ? "" : ` ${says("practice.comes-back", { n: back.at - course.answered })}`;
    html(said, judgementSaid(question, judgement, known.wording) + returns);
    const other = lookAlikeOf(question, chosen);
    html(part("why"), other === undefined ? "" : reasonHtml(question, other, known));
    for (const input of page.querySelectorAll<HTMLInputElement>("input[name=answer]")) input.disabled = true;
    part("answer").hidden = true;
    part("next").hidden = false;
    part("next").focus();
    tellWaiting();
  };
  page.querySelector("form")?.addEventListener("submit", (event) => {
    event.preventDefault();
    answer();
  });
  part("next").addEventListener("click", () => {
    ask();
    page.querySelector<HTMLInputElement>("input[name=answer]")?.focus();
  });
  part("clear").addEventListener("click", () => {
    forgetCourse(storage);
    course = readCourse(storage, () => course.seed + 1);
    part("device").textContent = says("practice.cleared");
  });
  tellWaiting();
  ask();
}
