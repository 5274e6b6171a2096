/** Narrow it down in the browser: what is known goes into the address, what follows from it onto the page. Nothing is sent. */
import type { NeighbourhoodBlock, NeighbourhoodIndex } from "../../../publishing/contracts/neighbourhoods.ts";
import { pageWords } from "../../words/client.ts";
import type { IdentifyTaxon } from "../identify/identify-taxa.ts";
import { type AroundSquare, aroundSquare, frequenciesOf } from "./around-square.ts";
import { hashOf, type Known, knownOf } from "./known.ts";
import { fillForm, offeredBy, readForm, today } from "./known-form.ts";
import { type Helper, helperOf } from "./narrow.ts";
import { pageData } from "./page-data.ts";
import { askPlace } from "./place-field.ts";
import { blockNameOf } from "./places.ts";
import { showResult } from "./show-result.ts";
import { showTold } from "./show-told.ts";

const form = document.querySelector<HTMLFormElement>("form.known");
if (form !== null) void start(form);

async function start(form: HTMLFormElement): Promise<void> {
  const page = pageData();
  const say = pageWords();
  const { language } = { language: document.documentElement.lang };
  const labels = new Map(page.castes.map(({ id, label }) => [id, label]));
  const casteName = (caste: string) => labels.get(caste) ?? caste;
  const status = document.getElementById("narrow-say");
  if (status !== null) status.textContent = say("narrow.loading");
  let tables: { helper: Helper; index: NeighbourhoodIndex };
  try {
    const [taxa, index] = await Promise.all([
      fetched<IdentifyTaxon[]>(page.addresses.identify),
      fetched<NeighbourhoodIndex>(`${page.addresses.places}index.json`),
    ]);
    tables = { helper: helperOf(taxa), index };
  } catch {
    if (status !== null) status.textContent = say("narrow.failed");
    return;
  }
  const { helper, index } = tables;
  const speech = { say, language, casteName, nearestKm: index.nearest_km };
  const blocks = new Map<string, Promise<NeighbourhoodBlock>>();
  let around: AroundSquare | undefined;
  let known: Known = first(form);

  const show = () => {
    showTold(form, known, speech);
    showResult({ helper, known, around, everywhere: frequenciesOf(index), page, speech, choose });
  };
  const become = async (next: Known, { write = true } = {}) => {
    const moved = next.square !== known.square || around === undefined;
    known = next;
    if (write) history.replaceState(null, "", `#${hashOf(known)}`);
    if (moved) around = await aroundOf(known.square);
    show();
  };
  const choose = (question: string, state: string) => {
    known = { ...known, states: new Map([...known.states, [question, state]]) };
    fillForm(form, known);
    void become(known).then(() => document.getElementById("narrow-say")?.focus());
  };
  async function aroundOf(square: string): Promise<AroundSquare | undefined> {
    const name = square === "" ? undefined : blockNameOf(index, square);
    if (name === undefined) return undefined;
    const block = blocks.get(name) ?? fetched<NeighbourhoodBlock>(`${page.addresses.places}${name}.json`);
    blocks.set(name, block);
    return await block.then(
      (found) => aroundSquare(index, found, square),
      () => {
        blocks.delete(name);
        return undefined;
      },
    );
  }

  const place = askPlace(form, { index, page, say, found: (square) => void become({ ...known, square }) });
  const load = async (next: Known) => {
    fillForm(form, next);
    place.show(next.square);
    await become(next, { write: false });
  };
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("change", () => void become(readForm(form, known.square)));
  form.querySelector("#narrow-clear")?.addEventListener("click", () => {
    history.replaceState(null, "", location.pathname);
    void load(first(form));
  });
  form.querySelector("#when-clear")?.addEventListener("click", () => {
    fillForm(form, { ...known, date: "" });
    void become({ ...known, date: "" });
  });
  window.addEventListener("hashchange", () => void load(first(form)));
  await load(known);
}

/** What the address tells; without one, today. */
function first(form: HTMLFormElement): Known {
  if (location.hash.length > 1) return knownOf(location.hash, offeredBy(form));
  return { square: "", date: today(new Date()), caste: "", states: new Map() };
}

async function fetched<T>(address: string): Promise<T> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return (await answer.json()) as T;
}
