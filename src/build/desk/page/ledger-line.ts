import type { Line } from "../../../review/desk/answers.ts";
import { button, element, figure } from "./dom.ts";
import { weight } from "./settling-table.ts";

/** How a line stands in the list; `isUnfolded` is undefined for one record. */
interface Standing {
  kind: "look" | "record";
  isCurrent: boolean;
  isUnfolded: boolean | undefined;
}

/** One line of the ledger: the name, or the question where it is asked of several names, and how many are open. */
export function lineButton(
  line: Line,
  { kind, isCurrent, isUnfolded }: Standing,
  press: () => void,
): HTMLButtonElement {
  const isSeveral = isUnfolded !== undefined;
  const isMixed = isSeveral && /^\d+ names$/.test(line.name);
  const what = [
    isMixed ? line.name : kind === "look" ? line.question : "",
    line.place,
    line.date,
    isSeveral ? line.source : "",
  ];
  const end = line.open === 0 ? element("b", {}, line.ruling || "ruled") : isSeveral ? figure(line.open) : "";
  return button(
    {
      "aria-current": isCurrent ? "true" : undefined,
      "aria-expanded": isUnfolded === undefined ? undefined : String(isUnfolded),
      class: line.open === 0 ? "ruled" : undefined,
    },
    press,
    kind === "look" && weight(line.severity),
    isMixed
      ? element("span", { class: "name asks" }, line.question)
      : element("span", { class: "name" }, line.name || "no name"),
    element(
      "span",
      { class: "end" },
      end,
      isSeveral && line.open > 0 && element("span", { class: "unseen" }, " records"),
    ),
    element("span", { class: "what" }, what.filter(Boolean).join(" · ")),
  );
}
