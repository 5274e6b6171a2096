import type { Period } from "../../../publishing/contracts.ts";
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

/**
 * What a period is called after "since" or alone.
 *
 * @example since({ id: "p2", label: "2006–2024", from: 2006, to: 2024 }) // "since 2006"
 */
export function since(period: Period): string {
  return period.from === null
    ? say("text.until", { year: String(period.to) })
    : say("text.since", { year: String(period.from) });
}
