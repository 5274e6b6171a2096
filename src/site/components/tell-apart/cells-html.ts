import { escapeHtml } from "../../words/escape-html.ts";
import { rowName } from "../identify/body-words.ts";
import { cellClass } from "../identify/cell-class.ts";
import type { PartState } from "../identify/part-state.ts";
import type { Row } from "./comparison.ts";
import type { Wording } from "./comparison-words.ts";
import { stateHtml } from "./scheme-text.ts";

/**
 * A row as HTML: its name, and a cell a column; parts of the drawn body in their colours.
 *
 * @param before a cell before its name
 */
export function rowHtml(row: Row, wording: Wording, before = ""): string {
  const kind = row.agrees ? "quiet" : row.settles ? "settles" : "";
  const cells = row.cells.map(({ told, unlike }) => {
    const classes = [
      ...(row.drawn ? ["part", cellClass(told?.state, row.part, false)] : []),
      ...(unlike ? ["differs"] : []),
    ];
    const inside =
      told === undefined
        ? `<span class="unseen">${wording.says("apart.not-described")}</span>${row.drawn ? "" : '<span aria-hidden="true">–</span>'}`
        : stateCell(told.state, row.drawn, wording);
    return `<td${classes.length === 0 ? "" : ` class="${classes.join(" ")}"`}>${inside}</td>`;
  });
  const name = escapeHtml(rowName(row.part, wording.says));
  return `<tr${kind === "" ? "" : ` class="${kind}"`}>${before}<th scope="row">${name}</th>${cells.join("")}</tr>`;
}

/** What stands in a cell: a ring where the part is absent, two colours where it varies, a mark drawn, else words. */
function stateCell(state: PartState, drawn: boolean, wording: Wording): string {
  const { words, piles, absent, mark } = state;
  const name = stateHtml(words, wording);
  if (absent) return `<span class="ring"></span>${name}`;
  const [one, two] = piles;
  if (!drawn || one === undefined) return name;
  if (two !== undefined) return variesCell(one, two, wording);
  if (mark === undefined) return name;
  return `<span class="marked"><svg class="body" viewBox="-11 -1 22 24" aria-hidden="true"><use href="#mark-box" class="pile-${one}"/><use href="#mark-${mark}" class="pile-black"/></svg>${name}</span>`;
}

/** On a desk both are named in their colours; on a phone the colours stand small. Who hears the page hears the names once. */
function variesCell(one: string, two: string, wording: Wording): string {
  const [first = "", second = ""] = [one, two].map((pile) => stateHtml(pile, wording));
  const halves = `<span class="halves" aria-hidden="true"><span class="pile-${one}">${first}</span><span class="pile-${two}">${second}</span></span>`;
  const swatches = `<span class="swatches" aria-hidden="true"><span class="pile-${one}"></span><span class="pile-${two}"></span>${wording.says("apart.varies")}</span>`;
  return `${halves}${swatches}<span class="unseen">${wording.says("body.either", { one: first, two: second })}</span>`;
}
