import { type Course, NEW_COURSE } from "./spaced-return.ts";

/** Where the course is kept: on the device, and nowhere else. A device that keeps nothing still practises. */
const KEY = "practice-course";

/** The device's storage; where the browser forbids even to ask for it, one that keeps nothing. */
export function deviceStorage(): Pick<Storage, "getItem" | "setItem" | "removeItem"> {
  try {
    return localStorage;
  } catch {
    return { getItem: () => null, setItem: () => {}, removeItem: () => {} };
  }
}

interface Kept extends Course {
  readonly seed: number;
}

/** The kept course, or a new one: what another version or a hand wrote is dropped. */
export function readCourse(storage: Pick<Storage, "getItem">, newSeed: () => number): Kept {
  try {
    const kept = JSON.parse(storage.getItem(KEY) ?? "null") as Partial<Kept> | null;
    if (isCourse(kept)) return kept;
  } catch {
    // What cannot be read is forgotten.
  }
  return { ...NEW_COURSE, seed: newSeed() };
}

function isCourse(kept: Partial<Kept> | null): kept is Kept {
  return (
    kept !== null &&
    typeof kept.answered === "number" &&
    typeof kept.seed === "number" &&
    typeof kept.last === "string" &&
    Array.isArray(kept.seen) &&
    Array.isArray(kept.waiting) &&
    kept.waiting.every(({ id, at, step }) => typeof id === "string" && Number.isInteger(at) && Number.isInteger(step))
  );
}

/** Keeps the course, where the device lets it. */
export function keepCourse(storage: Pick<Storage, "setItem">, course: Kept): void {
  try {
    storage.setItem(KEY, JSON.stringify(course));
  } catch {
    // A full or forbidden store: the course lasts as long as the page.
  }
}

/** Forgets the course. */
export function forgetCourse(storage: Pick<Storage, "removeItem">): void {
  try {
    storage.removeItem(KEY);
  } catch {
    // Nothing was kept.
  }
}
