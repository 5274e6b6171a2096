import { escapeHtml } from "../../words/escape-html.ts";
import { leaderFigure, miniBody } from "./body-html.ts";
import { rowHtml } from "./cells-html.ts";
import type { Comparison, Row } from "./comparison.ts";
import { headSentence, listed, type Wording } from "./comparison-words.ts";
import { lowered } from "./html.ts";
import { longValues, otherRows } from "./other-rows.ts";
import { reasonLists } from "./reason-lists.ts";
import { type Caste, castesIn, type View } from "./views.ts";

/** What is drawn beside the table itself. */
export interface Around {
  /** All views of the taxa, to switch between. */
  readonly views: readonly View[];
  readonly castes: readonly Caste[];
}

/**
 * One view of a comparison as HTML: which castes, the sentence, the table, and the reasons. The same in the build and in
 * the browser.
 *
 * @example renderView(comparison, { views, castes }, wording).startsWith('<div class="view"') // true
 */
export function renderView(comparison: Comparison, { views, castes }: Around, wording: Wording): string {
  const { view } = comparison;
  return `<div class="view" id="${view.id}">${switcher(view, views, castes, wording)}
<p class="say">${headSentence(comparison, wording)}</p>
<div class="sheet of-${comparison.columns.length}"><div>${comparisonTable(comparison, wording)}${comparison.columns.length > 2 ? longValues(comparison, wording) : ""}</div>
<div class="why">${reasonLists(comparison, wording)}</div></div></div>`;
}

/** Castes of a view in words. @example viewName(view, castes, wording) // "queen, worker and female" */
export function viewName({ castes: columns }: View, castes: readonly Caste[], wording: Wording): string {
  return escapeHtml(
    listed(
      castesIn(columns, castes).map(({ label }) => lowered(label)),
      wording,
    ),
  );
}

function switcher(view: View, views: readonly View[], castes: readonly Caste[], wording: Wording): string {
  const name = viewName(view, castes, wording);
  if (name === "") return "";
  const links = views
    .filter(({ id }) => id !== view.id)
    .map(
      (other) =>
        `<a href="#${other.id}">${wording.says("apart.show", { castes: viewName(other, castes, wording) })}</a>`,
    );
  return `<p class="showing">${wording.says("apart.showing", { castes: name })}${links.length === 0 ? "" : ` ${links.join(" · ")}`}</p>`;
}

/**
 * The table alone.
 *
 * @param only rows to draw; all by default
 */
export function comparisonTable(comparison: Comparison, wording: Wording, only?: (row: Row) => boolean): string {
  const { columns, rows } = comparison;
  const { says } = wording;
  const shown = only === undefined ? rows : rows.filter(only);
  const heads = columns.map(({ taxon, castes, form }) => {
    const scientific = `<i>${escapeHtml(shortScientific(taxon.scientific))}</i>`;
    const name = `<a href="${wording.link(taxon)}">${escapeHtml(taxon.short)}</a>`;
    return `<th scope="col">${miniBody(taxon, castes[0] ?? "", form)}${name}${scientific}</th>`;
  });
  const drawn = shown.filter((row) => row.drawn);
  const [first] = columns;
  const figure =
    first === undefined || only !== undefined
      ? ""
      : leaderFigure(
          first.taxon,
          first.castes[0] ?? "",
          first.form,
          drawn.map(({ part }) => part),
        );
  const cell = figure === "" ? "" : `<td class="figure-cell" rowspan="${drawn.length}">${figure}</td>`;
  const body = drawn.map((row, index) => rowHtml(row, wording, index === 0 ? cell : ""));
  const beside = figure === "" ? "" : '<td class="figure-cell"></td>';
  const rest = shown.filter(({ drawn }) => !drawn).map((row) => rowHtml(row, wording, beside));
  const other = only === undefined ? otherRows(comparison, wording, beside) : "";
  return `<table class="ribbon compare of-${columns.length}"><caption class="unseen">${says("apart.caption")}</caption>
<thead><tr>${beside}<td></td>${heads.join("")}</tr></thead>
<tbody class="body-rows">${body.join("")}</tbody>
${rest.length > 0 || other !== "" ? `<tbody class="word-rows">${rest.join("")}${other}</tbody>` : ""}</table>`;
}

/** The genus as its letter, as it is written beside others of the genus. @example shortScientific("Bombus lapidarius") // "B. lapidarius" */
export function shortScientific(name: string): string {
  const [genus = "", ...rest] = name.split(" ");
  return rest.length === 0 ? genus : `${genus.charAt(0)}. ${rest.join(" ")}`;
}
