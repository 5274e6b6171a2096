import type {
  AroundAnswer,
  DeskAnswer,
  OtherRecord,
  PastRuling,
  Question,
  RecordAnswer,
} from "../../../review/desk/answers.ts";
import { AT } from "./ask.ts";
import { button, counted, element } from "./dom.ts";
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
      element("h1", { id: "record-name", tabindex: "-1" }, element("span", {}, said.name || "No name")),
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
    element("section", { id: "history" }, ...historyOf(record.history)),
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
    element("h2", {}, weight(severity), title),
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
    element("h2", {}, "What the file says"),
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

/** Every ruling and opinion, those taken back struck through. */
export function historyOf(history: readonly PastRuling[]): HTMLElement[] {
  const nothing = element("p", { class: "small" }, "Nobody has ruled on it yet.");
  const list = element(
    "ol",
    { class: "history" },
    ...history.map(({ ruling, value, identification, partSeen, why, who, when, count, withdrawn }) =>
      element(
        "li",
        { class: withdrawn ? "withdrawn" : undefined },
        element(withdrawn ? "s" : "b", {}, [ruling, value].filter(Boolean).join(" ")),
        withdrawn && " taken back",
        [identification, partSeen && `seen: ${partSeen}`, why]
          .filter(Boolean)
          .map((text) => `; ${text}`)
          .join(""),
        element(
          "span",
          { class: "small" },
          ` ${[who, when.slice(0, 16).replace("T", " "), count && `one of ${count}`].filter(Boolean).join(", ")}`,
        ),
      ),
    ),
  );
  return [element("h2", {}, "Determinations and rulings"), history.length === 0 ? nothing : list];
}

/** Neighbours in the file, the rest of the visit, and records that may be the same. */
export function aroundSection(
  { neighbours, visit, alike }: AroundAnswer,
  record: RecordAnswer,
  acts: RecordActs,
): HTMLElement[] {
  const { square } = record;
  return [
    ...tableOf("Same name, day and 10 km square", alike, record, acts, true),
    ...tableOf("The rest of the visit", visit, record, acts),
    ...tableOf("Rows beside it in the file", neighbours, record, acts),
    ...(square === null
      ? []
      : [
          element(
            "p",
            { class: "small" },
            "Every record of ",
            ...[square.hectad, square.tetrad]
              .filter(Boolean)
              .flatMap((code, index) => [
                index === 0 ? "" : " and of ",
                element("a", { href: `${AT}square/${square.grid}/${code}` }, code),
              ]),
          ),
        ]),
  ];
}

function tableOf(
  title: string,
  others: readonly OtherRecord[],
  own: RecordAnswer,
  acts: RecordActs,
  linked = false,
): HTMLElement[] {
  if (others.every(({ record }) => record === own.record)) return [];
  const rows = others.map((other) =>
    element(
      "tr",
      { class: other.record === own.record ? "own" : undefined },
      element(
        "th",
        { scope: "row" },
        other.record === own.record
          ? "this record"
          : button({ class: "quiet" }, () => acts.open(other.record), `${other.source} ${other.row}`),
      ),
      element("td", {}, other.name),
      element("td", {}, other.date),
      element("td", {}, other.place),
      element("td", {}, other.kind),
      element("td", {}, other.status === "used" ? "used" : `${other.status}: ${other.reason}`),
      linked &&
        element(
          "td",
          {},
          button({ class: "quiet" }, () => acts.link("same as", other.key), "the same"),
          " ",
          button({ class: "quiet" }, () => acts.link("not the same", other.key), "another"),
        ),
    ),
  );
  const heads = ["Row", "Name", "Date", "Place", "Stage, sex, caste", "Status", ...(linked ? ["Is it"] : [])];
  return [
    element(
      "div",
      { class: "scroll", tabindex: "0", role: "region", "aria-label": title },
      element(
        "table",
        { class: "others" },
        element("caption", {}, title),
        element("thead", {}, element("tr", {}, ...heads.map((head) => element("th", { scope: "col" }, head)))),
        element("tbody", {}, ...rows),
      ),
    ),
  ];
}
