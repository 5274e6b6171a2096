import type { PastRuling } from "../../../review/desk/answers.ts";
import { element } from "./dom.ts";

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
  return [element("h3", {}, "Determinations and rulings"), history.length === 0 ? nothing : list];
}
