import type { DeskAnswer, GroupAnswer } from "../../../review/desk/answers.ts";
import { ask } from "./ask.ts";
import { element } from "./dom.ts";
import { asQuery } from "./filter-form.ts";
import type { Rulings } from "./rulings.ts";
import { labelled, openSheet, withChoices } from "./sheets.ts";

const WHOLE: readonly (readonly [key: string, ruling: string])[] = [
  ["u", "use"],
  ["h", "hold"],
  ["l", "leave out"],
  ["c", "correct"],
  ["r", "re-identify"],
];

/** Rules on all open records of the look, after saying how many and which. */
export async function lookSheet(rulings: Rulings, { reasons }: DeskAnswer): Promise<void> {
  const { ledger, tell } = rulings.place;
  const line = ledger.current?.line;
  if (line === undefined) return;
  const { filter } = ledger;
  const group = await ask<GroupAnswer>(`group/${line.look}?${asQuery(filter)}`);
  if (group.records < 2) {
    tell("This look has one open record: rule on it alone.");
    return;
  }
  const alone = group.records - group.others;
  const others = element("input", { type: "checkbox", name: "others", checked: alone === 0 });
  const choice = rulingChoice();
  const value = element("input", { name: "value", autocomplete: "off" });
  value.value = group.proposals.length === 1 ? (group.proposals[0] ?? "") : "";
  const { field: why, list } = withChoices("why", rulings.draft.why, reasons);
  openSheet(
    `Rule on ${alone || group.records} records at once`,
    [
      element("p", {}, `On: ${group.filter}.`),
      group.others > 0
        ? element("label", { class: "check" }, others, `the ${group.others} that are asked something else too, as well`)
        : "",
      choice.node,
      labelled("Value", value, "correct: field=value; field=value. re-identify: the name"),
      labelled("Why", why),
      list,
      element("p", { class: "small" }, "Each gets a row of its own, all with one batch: z takes them back as one."),
    ],
    () => {
      const ruling = choice.value();
      rulings.keep({ why: why.value.trim() });
      rulings.ruleLook(ruling, ["correct", "re-identify"].includes(ruling) ? value.value : "", line.check, {
        look: line.look,
        filter,
        others: others.checked,
        count: others.checked ? group.records : alone,
        mark: group.mark,
      });
    },
    "Rule on all",
  );
  choice.focus();
}

/** The ruling of a whole look: chosen by its key, the arrows or a press. */
function rulingChoice(): { node: HTMLElement; value(): string; focus(): void } {
  const radios = WHOLE.map(([key, value], index) =>
    element("input", { type: "radio", name: "ruling", value, checked: index === 0, "data-key": key }),
  );
  const labels = radios.map((radio) =>
    element("label", {}, radio, " ", element("kbd", {}, radio.dataset["key"] ?? ""), ` ${radio.value}`),
  );
  const node = element("fieldset", { class: "choose" }, element("legend", {}, "Ruling"), ...labels);
  node.addEventListener("keydown", (event) => {
    const radio = radios.find((one) => one.dataset["key"] === event.key);
    if (radio === undefined) return;
    event.preventDefault();
    radio.checked = true;
    radio.focus();
  });
  const chosen = () => radios.find(({ checked }) => checked);
  return { node, value: () => chosen()?.value ?? "use", focus: () => chosen()?.focus() };
}
