import type { DeskTaxon } from "../../../review/desk/answers.ts";
import { button, element } from "./dom.ts";

/** Opens a sheet over the rulings: a form that Enter sends and Escape closes. The focus goes back where it was. */
export function openSheet(
  title: string,
  content: (Node | string)[],
  sent: () => void,
  word = "Rule",
): HTMLDialogElement {
  const form = element(
    "form",
    { method: "dialog" },
    element("h2", { id: "sheet-title" }, title),
    ...content,
    element(
      "p",
      { class: "sheet-buttons" },
      element("button", { type: "submit", class: "do" }, word),
      button({}, () => sheet.close(), "Leave it"),
    ),
  );
  const sheet = element("dialog", { class: "sheet", "aria-labelledby": "sheet-title" }, form);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    sheet.close();
    sent();
  });
  sheet.addEventListener("close", () => sheet.remove());
  document.body.append(sheet);
  sheet.showModal();
  sheet.querySelector<HTMLElement>("[autofocus], input, select, textarea, .option")?.focus();
  return sheet;
}

/** A field with its label. */
export function labelled(label: string, control: HTMLElement, note = ""): HTMLElement {
  return element(
    "label",
    { class: "labelled" },
    label,
    control,
    note !== "" && element("span", { class: "small" }, note),
  );
}

/** A field to write in, with a list to choose from. */
export function withChoices(
  name: string,
  value: string,
  choices: readonly string[],
): { field: HTMLInputElement; list: HTMLElement } {
  const id = `choices-${name}`;
  return {
    field: element("input", { name, value, list: id, autocomplete: "off" }),
    list: element("datalist", { id }, ...choices.map((choice) => element("option", { value: choice }))),
  };
}

/** Choices that a figure key takes, or a press. */
export function options(choices: readonly string[], taken: (choice: string, alone: boolean) => void): HTMLElement {
  const list = element(
    "div",
    { class: "options" },
    ...choices.map((choice, index) => {
      const made = element(
        "button",
        { type: "button", class: "option" },
        element("kbd", {}, String(index + 1)),
        " ",
        choice,
      );
      made.addEventListener("click", (event) => taken(choice, event.shiftKey));
      return made;
    }),
  );
  list.addEventListener("keydown", (event) => {
    const index = Number(event.key) - 1;
    const choice = choices[index];
    if (choice !== undefined) taken(choice, false);
    const all = [...list.querySelectorAll("button")];
    const at = all.indexOf(document.activeElement as HTMLButtonElement);
    const by =
      event.key === "ArrowDown" || event.key === "j" ? 1 : event.key === "ArrowUp" || event.key === "k" ? -1 : 0;
    if (by !== 0) all[(at + by + all.length) % all.length]?.focus();
  });
  return list;
}

/** A field that finds a taxon of the checklist by any part of its names; arrows choose, Enter takes. */
export function taxonField(taxa: readonly DeskTaxon[]): { node: HTMLElement; value: () => string } {
  const list = element("ul", { id: "taxa", role: "listbox", "aria-label": "Taxa" });
  const input = element("input", {
    name: "taxon",
    role: "combobox",
    "aria-controls": "taxa",
    "aria-expanded": "true",
    "aria-autocomplete": "list",
    autocomplete: "off",
  });
  let found: DeskTaxon[] = [];
  let at = -1;
  const draw = () => {
    list.replaceChildren(
      ...found.map(({ id, name, vernacular }, index) => {
        const item = element(
          "li",
          { id: `taxon-${id}`, role: "option", "aria-selected": String(index === at) },
          element("i", {}, name),
          ` ${vernacular}`,
        );
        item.addEventListener("click", () => {
          at = index;
          input.value = name;
          draw();
          input.focus();
        });
        return item;
      }),
    );
    input.setAttribute("aria-activedescendant", found[at] === undefined ? "" : `taxon-${found[at]?.id}`);
  };
  const search = () => {
    const words = input.value.toLowerCase().split(/\s+/).filter(Boolean);
    found = taxa.filter(({ words: text }) => words.every((word) => text.includes(word))).slice(0, 8);
    // Nothing is taken that was neither typed nor chosen.
    at = words.length === 0 || found.length === 0 ? -1 : 0;
    draw();
  };
  input.addEventListener("input", search);
  input.addEventListener("keydown", (event) => {
    const by = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    if (by === 0) return;
    event.preventDefault();
    at = Math.min(found.length - 1, Math.max(0, at + by));
    draw();
  });
  search();
  return {
    node: element("div", { class: "taxon-field" }, labelled("Name", input), list),
    value: () => found[at]?.name ?? input.value,
  };
}
