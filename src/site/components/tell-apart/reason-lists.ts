import type { Character } from "../../../publishing/contracts.ts";
import { escapeHtml } from "../../words/escape-html.ts";
import { formName, rowName } from "../identify/body-words.ts";
import type { Comparison, Row } from "./comparison.ts";
import { linked, listed, type Wording } from "./comparison-words.ts";
import { withBold } from "./html.ts";
import { schemeText, stateHtml } from "./scheme-text.ts";

const EVIDENCE = new Set(["sight", "photograph", "specimen"]);

/**
 * Under the table: what settles it and what can show that, what leads astray, and where to stop. As HTML.
 *
 * @example reasonLists(comparison, wording).includes("<h2>") // true
 */
export function reasonLists(comparison: Comparison, wording: Wording): string {
  const { says } = wording;
  const settling = comparison.rows
    .filter(({ settles }) => settles)
    .flatMap((row) => settlingItem(row, comparison, wording));
  const misleading = comparison.rows.flatMap((row) => misleadingItems(row, comparison, wording));
  const list = (title: string, items: readonly string[]) =>
    items.length === 0
      ? ""
      : `<div><h2>${title}</h2><ul>${items.map((item) => `<li>${item}</li>`).join("")}</ul></div>`;
  return `<div class="reasons">${list(says("apart.what-settles"), settling)}${list(says("apart.what-misleads"), misleading)}</div>${stopHere(comparison, wording)}`;
}

/** A part that settles it: which show what, what is said of each, and the least evidence that can show it. */
function settlingItem(row: Row, { columns }: Comparison, wording: Wording): string[] {
  const { says } = wording;
  const byState = new Map<string, string[]>();
  const notes: { name: string; text: string }[] = [];
  for (const [index, { taxon }] of columns.entries()) {
    const told = row.cells[index]?.told;
    if (told === undefined) continue;
    const names = byState.get(told.state.words) ?? [];
    byState.set(told.state.words, [...names, escapeHtml(taxon.short)]);
    const note = told.rows.find(({ reliability, note }) => reliability === "settles" && note !== "")?.note ?? "";
    if (note !== "") notes.push({ name: escapeHtml(taxon.short), text: schemeText(note, wording) });
  }
  const states = [...byState].map(([words, names]) =>
    says("apart.state-of", { state: stateHtml(words, wording), name: listed(names, wording) }),
  );
  const said = notes.map(({ name, text }) => (notes.length === 1 ? text : says("apart.of", { name, text })));
  const settling = row.cells.flatMap(
    ({ told }) => told?.rows.filter(({ reliability }) => reliability === "settles") ?? [],
  );
  const evidence = settling.map((each) => each.evidence).find((each) => EVIDENCE.has(each));
  if (evidence !== undefined) said.push(says(`apart.shown-by-${evidence}`));
  const name = `<b>${escapeHtml(rowName(row.part, says))}</b>`;
  return [`${says("apart.of", { name, text: states.join(says("body.between")) })}. ${said.join(" ")}`];
}

function misleadingItems(row: Row, { columns }: Comparison, wording: Wording): string[] {
  return columns.flatMap(({ taxon }, index) => {
    const rows = row.cells[index]?.told?.misleading ?? [];
    return runs(rows).map((character) => misleadingItem(character, row, taxon.short, wording));
  });
}

/** A bee that fades does so over many parts; the first says it, the others add nothing. */
function runs(rows: readonly Character[]): readonly Character[] {
  return rows.filter(({ note }) => note !== "");
}

function misleadingItem({ state, note, form }: Character, { part }: Row, name: string, wording: Wording): string {
  const { says } = wording;
  const who = form === "" ? escapeHtml(name) : `${escapeHtml(name)}, ${escapeHtml(formName(form, says))}`;
  const text = schemeText(note, wording);
  const said = state === "varies" ? says("body.varies-note", { note: text }) : `${stateHtml(state, wording)}. ${text}`;
  return says("apart.of", { name: `<b>${escapeHtml(rowName(part, says))}</b> (${who})`, text: said });
}

/** Where the species cannot be told: the aggregate, and what is of no group of the atlas at all. */
function stopHere({ verdicts, columns }: Comparison, wording: Wording): string {
  const { says, link, group } = wording;
  const aggregates = [
    ...new Set(verdicts.flatMap(({ aggregate, nested }) => (aggregate === undefined || nested ? [] : [aggregate]))),
  ];
  const stop = aggregates.map((aggregate) => says("apart.stop", { group: linked(aggregate, link) }));
  const outsiders = columns
    .filter(({ taxon }) => taxon.outside)
    .map(({ taxon }) =>
      says("apart.not-of-group", {
        name: escapeHtml(taxon.name),
        kind: schemeText(taxon.kind, wording),
        group: escapeHtml(group),
      }),
    );
  const said = [...stop, ...outsiders];
  return said.length === 0 ? "" : `<p class="caution">${withBold(said.join(" "))}</p>`;
}
