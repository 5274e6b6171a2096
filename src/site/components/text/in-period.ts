/**
 * When something was, by a period's label: "in 1990–2005", and "until 1989" where the period is open at the left.
 *
 * @example inPeriod("to 1989") // "until 1989"
 */
export function inPeriod(label: string): string {
  const open = /^to (\d+)$/.exec(label);
  return open === null ? `in ${label}` : `until ${open[1]}`;
}
