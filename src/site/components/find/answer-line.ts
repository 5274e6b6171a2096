import type { Answer } from "./answers.ts";

/**
 * Puts one answer into an element: what it is called, what it is, and why it was found; scientific names are set in
 * italics, and names of other languages say so.
 */
export function fillAnswer(into: HTMLElement, { title, language, kind, why }: Answer): void {
  into.append(worded("b", title, language));
  const line = document.createElement("small");
  line.append(kind);
  if (why !== undefined) {
    line.append(" · ", why.before, worded(why.isScientific ? "i" : "span", why.name, why.language), why.after);
  }
  into.append(" ", line);
}

function worded(element: "b" | "i" | "span", text: string, language: string | undefined): HTMLElement {
  const made = document.createElement(element);
  made.textContent = text;
  if (language !== undefined) made.lang = language;
  return made;
}
