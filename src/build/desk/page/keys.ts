import { kept } from "./kept.ts";

/** Whether letters go into a field, or a sheet is open. */
function isWriting(event: KeyboardEvent): boolean {
  const target = event.target as HTMLElement;
  return (
    target.matches("input, select, textarea, [contenteditable]") ||
    target.closest("dialog") !== null ||
    document.querySelector("dialog[open]") !== null
  );
}

/** Keys that may be held down; a ruling is one press. */
const MOVES = ["j", "k", "ArrowDown", "ArrowUp"];

/**
 * Single keys, for as long as no field has the focus. They can be turned off (WCAG 2.2, 2.1.4); the arrows, Enter and
 * Escape then still work in the list.
 *
 * @param acts what each key does
 */
export function listen(acts: Readonly<Record<string, () => void>>): void {
  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || isWriting(event)) return;
    const isLetter = event.key.length === 1;
    if (isLetter && kept("keys") === "off") return;
    const act = Object.hasOwn(acts, event.key) ? acts[event.key] : undefined;
    if (act === undefined || (event.repeat && !MOVES.includes(event.key))) return;
    const inLedger = (event.target as HTMLElement).closest(".ledger, body") !== null;
    if (event.key === "Enter" && (event.target as HTMLElement).closest("#record, .rulings, .mast") !== null) return;
    if (!inLedger) return;
    event.preventDefault();
    act();
  });
}
