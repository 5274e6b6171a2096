import type { Question, Settling, SettlingCell } from "../../../review/desk/answers.ts";
import { drawn, element } from "./dom.ts";

/** Colours that have a pile of their own in the style sheet. */
const PILES = ["black", "yellow", "lemon", "white", "red", "orange", "buff", "ginger", "brown", "grey", "smoky"];

/** What settles it: the parts as a ribbon, one column a caste or look-alike, and what it takes to see each. */
export function settlingTable(settling: Settling | null, questions: readonly Question[]): HTMLElement | null {
  if (settling === null || settling.rows.length === 0) return null;
  const asked = questions.map(({ message, way_out }) => `${message} ${way_out}`.toLowerCase());
  return element(
    "section",
    { class: "settles" },
    element("h3", {}, "What settles it"),
    settling.needs !== "" && element("p", { class: "say" }, "A record needs ", element("b", {}, settling.needs), "."),
    element(
      "div",
      { class: "scroll", tabindex: "0", role: "region", "aria-label": "Parts of the body and their states" },
      element(
        "table",
        { class: `ribbon columns-${settling.columns.length}` },
        element(
          "thead",
          {},
          element(
            "tr",
            {},
            element("td"),
            ...settling.columns.map(({ name, castes }) =>
              element("th", { scope: "col" }, name, castes !== "" && element("small", {}, castes)),
            ),
            element("th", { scope: "col", class: "shown-by" }, "Shown by"),
          ),
        ),
        element("tbody", {}, ...settling.rows.map(({ part, cells }) => rowOf(part, cells, settling, asked))),
      ),
    ),
    element("p", { class: "small" }, "A bar before a state marks where it differs from the first column."),
  );
}

function rowOf(part: string, cells: (SettlingCell | null)[], { columns }: Settling, asked: string[]): HTMLElement {
  const [first] = cells;
  const words = part.replaceAll("-", " ");
  const isAsked = asked.some((text) => new RegExp(`\\b${words.replace(/[^\w ]/g, ".")}\\b`).test(text));
  const settles = cells.find((cell, index) => cell?.reliability === "settles" && columns[index]?.own === true);
  const best = settles ?? first;
  return element(
    "tr",
    { class: isAsked ? "asked" : undefined },
    element("th", { scope: "row" }, words, isAsked && element("span", { class: "unseen" }, ", asked for")),
    ...cells.map((cell, index) => cellOf(cell, index > 0 && cell !== null && cell.state !== first?.state)),
    element("td", { class: "shown-by" }, best?.evidence ?? "", settles !== undefined && element("b", {}, "; settles")),
  );
}

function cellOf(cell: SettlingCell | null, differs: boolean): HTMLElement {
  if (cell === null) return element("td", { class: "part plain" }, "not known");
  const { state, note } = cell;
  const classes = `part ${PILES.includes(state) ? `pile-${state}` : "plain"}${differs ? " differs" : ""}`;
  if (state === "none")
    return element("td", { class: classes, title: note }, element("span", { class: "ring" }), "none");
  return element(
    "td",
    { class: classes, title: note || undefined },
    state === "varies" && note !== "" ? note.replace(/\..*$/, "") : state,
  );
}

/** The glyph of how much a question weighs: solid where it holds the record, open where it asks. */
export function weight(severity: string): SVGElement {
  return drawn(
    "svg",
    {
      class: "glyph",
      viewBox: "0 0 4 4",
      role: "img",
      "aria-label": severity === "blocks" ? "holds the record" : severity === "ask" ? "asks" : "note",
    },
    drawn("path", {
      class: severity === "blocks" ? "square" : "open-square",
      d: severity === "note" ? "M.5 2h3" : "M.5 .5h3v3h-3z",
    }),
  );
}
