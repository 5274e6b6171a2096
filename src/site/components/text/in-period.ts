import { say } from "../../words/say.ts";

/**
 * When something was, by a period's label: "in 1990–2005", and "until 1989" where the period is open at the left.
 *
 * @param label years alone, or words and the last year
 * @example inPeriod("to 1989") // "until 1989"
 */
export function inPeriod(label: string): string {
  const open = /^\D.*?(\d+)\D*$/.exec(label);
  return open === null ? say("text.in-years", { years: label }) : say("text.until", { year: open[1] ?? "" });
}
