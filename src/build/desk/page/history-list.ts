import type { PastRuling, RecordAnswer } from "../../../review/desk/answers.ts";
import { element } from "./dom.ts";

/** Fields in which a record itself tells of determinations. */
const DETERMINED = [
  ["identifiedBy", "by"],
  ["dateIdentified", "on"],
  ["identificationQualifier", "as"],
  ["identificationVerificationStatus", "state"],
  ["previousIdentifications", "before"],
  ["identificationRemarks", "remarks"],
] as const;

/** Every determination: the one the record came with, then all rulings and opinions, those taken back struck through. */
export function historyOf({ history, cells, said }: RecordAnswer): HTMLElement[] {
  const filled = new Map(cells);
  const own = DETERMINED.flatMap(([field, word]) => (filled.has(field) ? [`${word} ${filled.get(field)}`] : []));
  return [
    element("h3", {}, "Determinations and rulings"),
    element(
      "ol",
      { class: "history" },
      element(
        "li",
        {},
        "the record came as ",
        element("b", {}, said.name || "nothing"),
        own.map((text) => `; ${text}`).join(""),
      ),
      ...history.map(pastRuling),
    ),
    history.length === 0 && element("p", { class: "small" }, "Nobody has ruled on it yet."),
  ].filter((node) => node !== false);
}

function pastRuling(past: PastRuling): HTMLElement {
  const { ruling, value, identification, partSeen, why, who, when, count, withdrawn } = past;
  const more = [identification, partSeen && `seen: ${partSeen}`, why].filter(Boolean);
  const made = [who, when.slice(0, 16).replace("T", " "), count && `one of ${count}`].filter(Boolean);
  return element(
    "li",
    { class: withdrawn ? "withdrawn" : undefined },
    element(withdrawn ? "s" : "b", {}, [ruling, value].filter(Boolean).join(" ")),
    withdrawn && " taken back",
    more.map((text) => `; ${text}`).join(""),
    element("span", { class: "small" }, ` ${made.join(", ")}`),
  );
}
