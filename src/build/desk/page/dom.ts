type Child = Node | string | null | undefined | false;
type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/**
 * An element with attributes and children; what is false, null or undefined is left out.
 *
 * @example element("p", { class: "note" }, "Nothing to rule on.")
 */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: Child[]
): HTMLElementTagNameMap[Tag] {
  return filled(document.createElement(tag), attributes, children);
}

/** The same for the elements of a drawing. */
export function drawn<Tag extends keyof SVGElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: Child[]
): SVGElementTagNameMap[Tag] {
  return filled(document.createElementNS("http://www.w3.org/2000/svg", tag), attributes, children);
}

function filled<Made extends Element>(made: Made, attributes: Attributes, children: Child[]): Made {
  for (const [name, value] of Object.entries(attributes))
    if (value !== undefined && value !== false) made.setAttribute(name, value === true ? "" : String(value));
  made.append(...children.filter((child) => child !== null && child !== undefined && child !== false));
  return made;
}

/** A button that does something when it is pressed. */
export function button(attributes: Attributes, act: () => void, ...children: Child[]): HTMLButtonElement {
  const made = element("button", { type: "button", ...attributes }, ...children);
  made.addEventListener("click", act);
  return made;
}

/** A number with a thin mark between thousands. */
export function figure(count: number): string {
  return count.toLocaleString("en-GB");
}

/** A number and its noun: 1 record, 2 records. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${figure(count)} ${count === 1 ? one : many}`;
}
