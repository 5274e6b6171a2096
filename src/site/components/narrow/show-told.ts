/** What was told, in the line of each question: all that is seen of it while it is folded. */
import type { Known } from "./known.ts";
import type { Speech } from "./reason-words.ts";

/**
 * Writes each line, `[data-told]` in the form, from the fields.
 *
 * @param form after `fillForm`; an answer stands with its colour as beside its button
 */
export function showTold(form: HTMLFormElement, { square, date }: Known, { say, language }: Speech): void {
  for (const line of form.querySelectorAll<HTMLElement>("[data-told]")) {
    const name = line.dataset["told"] ?? "";
    const chosen = form.querySelector(`input[name="${name}"]:checked:not([value=""])`)?.closest("label");
    const told =
      name === "where"
        ? [square]
        : name === "when"
          ? [date === "" ? "" : dayOf(date, language)]
          : [...(chosen?.children ?? [])].flatMap((child) =>
              child.matches("input") ? [] : [child.matches("svg") ? child.cloneNode(true) : (child.textContent ?? "")],
            );
    const nothing = told.every((word) => word === "");
    line.classList.toggle("nothing", nothing);
    line.replaceChildren(...(nothing ? [say("narrow.untold")] : told));
  }
}

/**
 * A date in words.
 *
 * @param date year-month-day
 * @example dayOf("2026-05-12", "en-GB") // "12 May 2026"
 */
export function dayOf(date: string, language: string): string {
  return new Intl.DateTimeFormat(language, { dateStyle: "long", timeZone: "UTC" }).format(new Date(date));
}
