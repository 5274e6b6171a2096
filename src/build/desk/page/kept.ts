/** What this window remembers until it is closed. */
type Kept = "who" | "keys";

/** A remembered value; empty where there is none. */
export function kept(name: Kept): string {
  return sessionStorage.getItem(`desk-${name}`) ?? "";
}

/** Remembers a value in this window. */
export function keep(name: Kept, value: string): void {
  sessionStorage.setItem(`desk-${name}`, value);
}
