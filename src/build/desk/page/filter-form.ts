import type { Choice, DeskAnswer, DeskFilter } from "../../../review/desk/answers.ts";
import { button, element, figure } from "./dom.ts";

const EMPTY: DeskFilter = {
  check: "",
  severity: "",
  source: "",
  taxon: "",
  region: "",
  recorder: "",
  from: "",
  to: "",
  text: "",
  show: "open",
};

/** What the worklist can be narrowed by, in the order of the form. */
const NARROWED = [
  ["check", "Question"],
  ["severity", "Weight"],
  ["taxon", "Species or group"],
  ["source", "Source"],
  ["region", "Territory"],
  ["recorder", "Recorder"],
] as const;

/** The form above the list: a free text, and a fold with everything else it can be narrowed by. */
export interface FilterForm {
  node: HTMLElement;
  read(): DeskFilter;
  focus(): void;
}

/**
 * Makes the form that narrows the list.
 *
 * @param changed called with the new filter, a moment after the last key
 */
export function filterForm({ choices }: DeskAnswer, changed: () => void): FilterForm {
  const text = element("input", {
    type: "search",
    name: "text",
    id: "find",
    autocomplete: "off",
    placeholder: "name, place, date, key …",
  });
  const selects = new Map(NARROWED.map(([name]) => [name, selectOf(name, choices[name])]));
  const [from, to] = [yearField("from"), yearField("to")];
  const open = element("input", { type: "checkbox", name: "show", id: "open-only", checked: true });
  const count = element("span", { class: "narrowed" });
  const form = element(
    "form",
    { class: "filter", role: "search" },
    element("label", { for: "find" }, "Find ", element("kbd", {}, "/")),
    text,
    element(
      "details",
      {},
      element("summary", {}, "Narrow the list", count),
      ...NARROWED.map(([name, label]) => field(label, selects.get(name))),
      element("div", { class: "years" }, field("From year", from), field("to year", to)),
      element("label", { class: "check" }, open, "only what is still open"),
      button(
        { class: "quiet" },
        () => {
          form.reset();
          changed();
        },
        "The whole list",
      ),
    ),
  );
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const later = () => {
    clearTimeout(waiting);
    waiting = setTimeout(changed, 150);
  };
  form.addEventListener("input", later);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    text.blur();
    changed();
  });
  const read = (): DeskFilter => ({
    ...EMPTY,
    ...Object.fromEntries([...selects].map(([name, select]) => [name, select.value])),
    from: year(from.value),
    to: year(to.value),
    text: text.value,
    show: open.checked ? "open" : "",
  });
  form.addEventListener("input", () => {
    const set = [...selects.values(), from, to].filter(({ value }) => value !== "").length;
    count.textContent = set === 0 ? "" : ` (${set} set)`;
  });
  return { node: form, read, focus: () => text.focus() };
}

function year(text: string): string {
  return /^\d{4}$/.test(text) ? text : "";
}

function field(label: string, control: HTMLElement | undefined): HTMLElement {
  return element("label", {}, label, " ", control ?? "");
}

function selectOf(name: string, choices: readonly Choice[]): HTMLSelectElement {
  return element(
    "select",
    { name },
    element("option", { value: "" }, "any"),
    ...choices.map(({ value, label, records }) => element("option", { value }, `${label} (${figure(records)})`)),
  );
}

function yearField(name: string): HTMLInputElement {
  return element("input", { name, inputmode: "numeric", maxlength: 4, size: 4, autocomplete: "off" });
}

/** A filter as part of an address. */
export function asQuery(filter: DeskFilter): string {
  return new URLSearchParams(Object.entries(filter).filter(([, value]) => value !== "")).toString();
}
