import type { DeskAnswer, Question, RecordAnswer } from "../../../review/desk/answers.ts";
import { button, counted, element } from "./dom.ts";
import { historyOf } from "./history-list.ts";
import { settlingTable, weight } from "./settling-table.ts";

/** What the page of a record can ask the desk to do. */
export interface RecordActs {
  open(record: number): void;
  link(ruling: "same as" | "not the same", key: string): void;
  correct(): void;
  whole(): void;
  back(): void;
}

/**
 * One record as a page of a book: the questions on top, map and season below them, then what settles it, what the file
 * says, and what was ruled before. Map, season and other records are put in when they come.
 */
export function recordPage(record: RecordAnswer, desk: DeskAnswer, acts: RecordActs): HTMLElement {
  const { taxon, said } = record;
  return element(
    "div",
    { class: "page" },
    button({ class: "to-list" }, acts.back, "To the list"),
    element(
      "header",
      { class: "head" },
      element("p", { class: "small" }, `${record.source} · ${record.file}, row ${record.row}`),
      element("h2", { id: "record-name", tabindex: "-1" }, element("span", {}, said.name || "No name")),
      element("p", { class: "facts" }, facts(record)),
      element("p", { class: "small" }, taxon === null ? "Not in the checklist" : read(record)),
      element("p", { id: "status", class: "status" }, statusOf(record)),
    ),
    questionsOf(record, acts),
    element(
      "div",
      { class: "evidence" },
      element("section", { id: "map", "aria-label": "Where" }),
      element("section", { id: "season", "aria-label": "When" }),
    ),
    settlingTable(record.settling, record.questions),
    cellsOf(record),
    element("section", { id: "history" }, ...historyOf(record)),
    element("section", { id: "around", "aria-busy": "true" }),
    desk.invented && element("p", { class: "small" }, "Invented records."),
  );
}

function facts({ said, castes }: RecordAnswer): string {
  return [said.date || "no date", said.place || "no place", castes.join(", ") || said.kind].filter(Boolean).join(" · ");
}

function read({ taxon, place, territory, square }: RecordAnswer): string {
  return [
    "Read as ",
    taxon?.name ?? "",
    place === "" ? "" : `; ${place}`,
    square === null ? "" : `; ${square.tetrad || square.hectad}, ${territory}`,
  ]
    .join("")
    .trim();
}

function statusOf({ status, reason }: RecordAnswer): string {
  return status === "used" ? "Used as it stands" : `${status === "held" ? "Held" : "Not used"}: ${reason}`;
}

function questionsOf({ questions }: RecordAnswer, acts: RecordActs): HTMLElement {
  const open = questions.filter(({ severity }) => severity !== "note");
  const notes = questions.filter(({ severity }) => severity === "note");
  return element(
    "section",
    { class: "questions", "aria-label": "Questions" },
    ...open.map((question) => questionOf(question, acts)),
    open.length === 0 && element("p", { class: "say" }, "Nothing is asked of this record."),
    notes.length > 0 &&
      element(
        "p",
        { class: "small" },
        "Noted: ",
        notes.map(({ title, value }) => (value === "" ? title : `${title} (${value})`)).join("; "),
      ),
  );
}

function questionOf(
  { title, severity, field, value, message, way_out, proposal, records }: Question,
  acts: RecordActs,
): HTMLElement {
  return element(
    "div",
    { class: "question" },
    element("h3", {}, weight(severity), element("span", {}, title)),
    element(
      "p",
      { class: "say" },
      field !== "" && value !== "" && element("b", {}, `${field} “${value}” `),
      sentence(message),
    ),
    way_out !== "" && element("p", { class: "way-out" }, element("b", {}, "To settle it "), way_out),
    proposal !== "" &&
      element(
        "p",
        { class: "way-out" },
        element("b", {}, "Proposed "),
        element("code", {}, proposal),
        " ",
        button({ class: "quiet" }, acts.correct, "Look at it (c)"),
      ),
    records > 1 &&
      element(
        "p",
        { class: "way-out" },
        `${counted(records, "record")} are asked this for the same cause. `,
        button({ class: "quiet" }, acts.whole, "Rule on all (b)"),
      ),
  );
}

function sentence(text: string): string {
  return /[.?!]$/.test(text) ? text : `${text}.`;
}

function cellsOf({ cells, key }: RecordAnswer): HTMLElement {
  return element(
    "section",
    { class: "cells" },
    element("h3", {}, "What the file says"),
    element(
      "table",
      {},
      element("caption", {}, "Filled cells, as they stand. Record key ", element("code", {}, key)),
      element(
        "tbody",
        {},
        ...cells.map(([field, text]) =>
          element("tr", {}, element("th", { scope: "row" }, field), element("td", {}, text)),
        ),
      ),
    ),
  );
}
