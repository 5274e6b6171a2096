/** Small makers of page elements. */

/**
 * An element with attributes and contents; a text stands as text.
 *
 * @example made("p", { class: "note" }, "a", made("b", {}, "c")) // <p class="note">a<b>c</b></p>
 */
export function made<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: Readonly<Record<string, string>>,
  ...contents: (Node | string)[]
): HTMLElementTagNameMap[Name] {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.append(...contents);
  return element;
}

/** A message whose `**…**` are bold. @example marked("**Four** remain") // [<b>Four</b>, " remain"] */
export function marked(message: string): (Node | string)[] {
  return message.split("**").map((part, i) => (i % 2 === 1 ? made("b", {}, part) : part));
}

/** A copy of what a template of the page holds; nothing where it has none. */
export function copyOf(id: string): Node[] {
  const template = document.getElementById(id);
  return template instanceof HTMLTemplateElement ? [template.content.cloneNode(true)] : [];
}

/** The id of a state's template: one word, as an id must be. @example swatchId("a few black hairs") // "swatch-a_few_black_hairs" */
export function swatchId(state: string): string {
  return `swatch-${state.replaceAll(/\s/g, "_")}`;
}

/** The swatch of a state: a copy of the one beside the answer of that state in the form. */
export function swatchOf(state: string): Node[] {
  return copyOf(swatchId(state));
}
