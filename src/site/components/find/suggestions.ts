import { fillAnswer } from "./answer-line.ts";
import type { Answer } from "./answers.ts";

/** What the list under the field does for its owner. */
export interface Suggesting {
  readonly field: HTMLInputElement;
  readonly list: HTMLElement;
  /** Called when a line is chosen. */
  readonly open: (answer: Answer) => void;
}

/**
 * The list under a field, worked by keyboard and pointer as the combobox pattern of the ARIA Authoring Practices Guide
 * has it: focus stays in the field, Down and Up walk through the lines and back into the field, Enter opens the line,
 * Escape closes the list and then empties the field, Tab leaves.
 */
export class Suggestions {
  readonly #owner: Suggesting;
  #lines: readonly Answer[] = [];
  #active = -1;

  constructor(owner: Suggesting) {
    this.#owner = owner;
    owner.field.addEventListener("keydown", (event) => this.#key(event));
    owner.field.addEventListener("blur", () => this.close());
    // A press would take the focus from the field, and so close the list before the click.
    owner.list.addEventListener("pointerdown", (event) => event.preventDefault());
    owner.list.addEventListener("click", (event) => {
      const line = (event.target as Element).closest("[role=option]");
      const answer = line === null ? undefined : this.#lines[[...owner.list.children].indexOf(line)];
      if (answer !== undefined) owner.open(answer);
    });
  }

  /** The line that Enter opens, if one is chosen. */
  get chosen(): Answer | undefined {
    return this.#lines[this.#active];
  }

  /** Shows lines, none of them chosen; without lines the list closes. */
  show(lines: readonly Answer[]): void {
    const { list, field } = this.#owner;
    this.#lines = lines;
    list.replaceChildren(...lines.map((line, index) => optionOf(line, `${list.id}-${index}`)));
    this.#choose(-1);
    list.hidden = lines.length === 0;
    field.setAttribute("aria-expanded", String(lines.length > 0));
  }

  close(): void {
    const { list, field } = this.#owner;
    this.#choose(-1);
    list.hidden = true;
    field.setAttribute("aria-expanded", "false");
  }

  #choose(index: number): void {
    const { list, field } = this.#owner;
    this.#active = index;
    for (const [number, option] of [...list.children].entries())
      option.setAttribute("aria-selected", String(number === index));
    const option = list.children[index];
    if (option === undefined) {
      field.removeAttribute("aria-activedescendant");
      return;
    }
    field.setAttribute("aria-activedescendant", option.id);
    option.scrollIntoView({ block: "nearest" });
  }

  #key(event: KeyboardEvent): void {
    const { list, field } = this.#owner;
    const count = this.#lines.length;
    if (event.isComposing) return;
    if (event.key === "Escape") {
      event.preventDefault();
      if (list.hidden) field.value = "";
      else this.close();
    }
    if ((event.key !== "ArrowDown" && event.key !== "ArrowUp") || count === 0) return;
    event.preventDefault();
    if (list.hidden) {
      list.hidden = false;
      field.setAttribute("aria-expanded", "true");
    }
    if (event.altKey) return;
    // One place more than there are lines: the field itself, before the first and behind the last.
    const step = event.key === "ArrowDown" ? 1 : -1;
    this.#choose(((this.#active + 1 + step + count + 1) % (count + 1)) - 1);
  }
}

function optionOf(answer: Answer, id: string): HTMLElement {
  const option = document.createElement("div");
  option.id = id;
  option.setAttribute("role", "option");
  fillAnswer(option, answer);
  return option;
}
