/**
 * Free choice of two to four taxa: the page's address holds them, `?taxa=a,b`, so that a comparison can be kept or sent.
 * What is drawn comes from the same code as the prepared pages.
 */

import { pageWords } from "../../words/client.ts";
import { showMarks, withoutMarks } from "../../words/fallback.ts";
import type { IdentifyTaxon } from "../identify/identify-taxa.ts";
import { pageFacts, wordingInBrowser } from "./browser-wording.ts";
import { comparisonOf } from "./comparison.ts";
import { renderView } from "./render-comparison.ts";
import { viewsOf } from "./views.ts";

/** Most that fit side by side. */
const MOST = 4;
const form = document.querySelector<HTMLFormElement>(".choose form");
const chosen = document.querySelector<HTMLElement>("#chosen");
const said = form?.querySelector<HTMLElement>("[role=status]");
if (form && chosen && said) start(form, chosen, said);

function start(form: HTMLFormElement, chosen: HTMLElement, said: HTMLElement): void {
  const facts = pageFacts();
  const says = pageWords();
  const fields = [...form.querySelectorAll("select")];
  let fetched: Promise<readonly IdentifyTaxon[]> | undefined;
  const draw = async (move: boolean) => {
    const slugs = [...new Set(fields.map(({ value }) => value).filter(Boolean))];
    if (slugs.length < 2) {
      said.textContent = says("apart.choose-two");
      return;
    }
    try {
      fetched ??= fetch(facts.taxa).then(async (answer) => (await answer.json()) as IdentifyTaxon[]);
      const all = await fetched;
      const taxa = slugs.flatMap((slug) => all.find((taxon) => taxon.slug === slug) ?? []);
      const wording = wordingInBrowser(facts, says);
      const views = viewsOf(taxa, facts.castes);
      const html = views.map((view) =>
        renderView(comparisonOf(taxa, view, all), { views, castes: facts.castes }, wording),
      );
      chosen.innerHTML = showMarks(`<div class="views">${html.join("")}</div>`);
      history.replaceState(null, "", `?taxa=${slugs.join(",")}${location.hash}`);
      const names = new Intl.ListFormat(wording.tag).format(taxa.map(({ name }) => withoutMarks(name)));
      said.textContent = says("apart.choose-done", { names });
      if (move) chosen.focus();
    } catch {
      fetched = undefined;
      said.textContent = says("apart.choose-failed");
    }
  };
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void draw(true);
  });
  const asked = (new URLSearchParams(location.search).get("taxa") ?? "").split(",").slice(0, MOST);
  const known = asked.filter(
    (slug) => fields[0]?.querySelector(`option[value="${CSS.escape(slug)}"]`) !== null && slug !== "",
  );
  for (const [index, slug] of known.entries()) if (fields[index]) fields[index].value = slug;
  if (known.length > 1) void draw(false);
}
