import type { DeskAnswer } from "../../../review/desk/answers.ts";
import { AT } from "./ask.ts";
import { button, element } from "./dom.ts";
import { keep, kept } from "./kept.ts";
import { openSheet } from "./sheets.ts";

/** The rulings, each with its key, as the bar shows them. */
export const KEYS: readonly (readonly [key: string, word: string, says: string])[] = [
  ["u", "Use", "the record is used as it stands"],
  ["h", "Hold", "it waits, and is not used meanwhile"],
  ["l", "Leave out", "it is not used"],
  ["c", "Correct", "a field is read otherwise; a proposal stands there already"],
  ["r", "Re-identify", "it is another taxon"],
  ["i", "Identification", "what is known of it"],
  ["p", "Part seen", "what it rests on"],
  ["w", "Why", "in words"],
  ["b", "Whole look", "one ruling for all records of the look"],
  ["z", "Take back", "the last ruling of this window"],
];

/** The head of the desk: what it is, who rules, and the keys. */
export function mast({ title, invented }: DeskAnswer): HTMLElement {
  const who = element("input", {
    id: "who",
    value: kept("who"),
    autocomplete: "off",
    size: 10,
    placeholder: "role or initials",
  });
  who.addEventListener("input", () => keep("who", who.value.trim()));
  return element(
    "header",
    { class: "mast" },
    element("h1", { class: "title" }, element("a", { href: AT }, "Review desk"), " ", element("span", {}, title)),
    element("p", { class: "small" }, invented ? "Invented records. " : "", "Private: it shows people and places."),
    element(
      "label",
      {},
      "Ruling as ",
      who,
      element("span", { class: "unseen" }, ". A name is personal data: give a role or initials."),
    ),
    button({ class: "quiet" }, keysSheet, "Keys ", element("kbd", {}, "?")),
  );
}

/** What the keys do, and whether single letters rule. */
export function keysSheet(): void {
  const off = element("input", { type: "checkbox", name: "keys" });
  off.checked = kept("keys") !== "off";
  off.addEventListener("change", () => keep("keys", off.checked ? "" : "off"));
  const rows: readonly (readonly [string, string])[] = [
    ["j k ↓ ↑", "next and last line"],
    ["Enter", "unfold a look, or read the record"],
    ["Esc", "back to the list"],
    ["/", "find"],
    ...KEYS.map(([key, word, says]) => [key, `${word}: ${says}`] as const),
  ];
  openSheet(
    "Keys",
    [
      element(
        "dl",
        { class: "keys" },
        ...rows.flatMap(([key, says]) => [element("dt", {}, element("kbd", {}, key)), element("dd", {}, says)]),
      ),
      element("label", { class: "check" }, off, "single letters rule"),
      element(
        "p",
        { class: "small" },
        "Who rules is kept with each ruling: give a role or initials, for a name is personal data.",
      ),
    ],
    () => {},
    "Good",
  );
}
