import type { AroundAnswer, OtherRecord, RecordAnswer } from "../../../review/desk/answers.ts";
import { AT } from "./ask.ts";
import { button, element } from "./dom.ts";
import type { RecordActs } from "./record-page.ts";

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
