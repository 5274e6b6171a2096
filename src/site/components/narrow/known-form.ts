/** The form of what is known: read, and set. */
import type { Known } from "./known.ts";

/**
 * What the fields say now; the square is kept beside them, since a text becomes one only when it is set.
 *
 * @param form with a date field `when`, radio groups `caste` and `state-…`
 */
export function readForm(form: HTMLFormElement, square: string): Known {
  const data = new FormData(form);
  const text = (name: string) => String(data.get(name) ?? "");
  const states = [...data.keys()]
    .filter((name) => name.startsWith("state-"))
    .map((name): [string, string] => [name.slice("state-".length), text(name)]);
  return { square, date: text("when"), caste: text("caste"), states: new Map(states) };
}

/** Sets every field to what is known. */
export function fillForm(form: HTMLFormElement, { date, caste, states }: Known): void {
  for (const field of form.querySelectorAll<HTMLInputElement>("input[type=radio]")) {
    const wanted = field.name === "caste" ? caste : states.get(field.name.slice("state-".length));
    field.checked = field.value === wanted;
  }
  const when = form.querySelector<HTMLInputElement>("input[name=when]");
  if (when !== null) when.value = date;
}

/** Answers and castes the form offers. */
export function offeredBy(form: HTMLFormElement): { states: Map<string, string[]>; castes: string[] } {
  const states = new Map<string, string[]>();
  const castes: string[] = [];
  for (const { name, value } of form.querySelectorAll<HTMLInputElement>("input[type=radio]")) {
    if (name === "caste") castes.push(value);
    else {
      const id = name.slice("state-".length);
      states.set(id, [...(states.get(id) ?? []), value]);
    }
  }
  return { states, castes };
}

/** Today where the device is. @example today(new Date(2026, 4, 12)) // "2026-05-12" */
export function today(now: Date): string {
  const two = (number: number) => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
