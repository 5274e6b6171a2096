/**
 * A period as shown: explicit years with an en dash, "to 1979" where it is open at the left.
 *
 * @example periodLabel({ from: 1990, to: 2005 }) // => "1990–2005"
 */
export function periodLabel({ from, to }: { from: number | null; to: number }): string {
  if (from === null) return `to ${to}`;
  return from === to ? String(from) : `${from}–${to}`;
}
