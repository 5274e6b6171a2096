/** The square the reader chose, kept on the device; nothing is kept where the browser refuses. */
const KEY = "atlas-square";

/** The square that was kept, or undefined. @example keptSquare() // "NZ27" */
export function keptSquare(): string | undefined {
  try {
    return localStorage.getItem(KEY) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Keeps a square, or forgets it. @example keepSquare(undefined) // nothing is kept */
export function keepSquare(code: string | undefined): void {
  try {
    if (code === undefined) localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, code);
  } catch {
    // Without storage the page works for as long as it is open.
  }
}
