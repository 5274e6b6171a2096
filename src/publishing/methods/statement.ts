import type { AtlasFile } from "../contracts.ts";

/** One sentence or paragraph of the methods page, under its heading; a heading's lower case with hyphens is its place. */
export type Statement = AtlasFile["methods"][number];

/** A method as the methods page tells it; every part is HTML without a frame. */
export interface ToldMethod {
  /** What it computes, in a sentence or two. */
  readonly does: string;
  /** Its formulas, one a line. */
  readonly formulas: readonly string[];
  /** What it tells, and what it does not, each going on after these words. */
  readonly tells: string;
  readonly tellsNot: string;
  /** After "It speaks": the smallest data for which it speaks, with the settings in force. */
  readonly speaks: string;
  /** How it behaves with few data. */
  readonly few: string;
  readonly source: string;
  /** Which steps are not the paper's, or could not be read there. */
  readonly reading: string;
}

/**
 * Sentences under one heading; empty ones are left out.
 *
 * @example section("Change", "One.", "") // => [{ section: "Change", html: "One." }]
 */
export function section(title: string, ...sentences: readonly string[]): Statement[] {
  return sentences.filter(Boolean).map((html) => ({ section: title, html }));
}

/**
 * A method in one order: what it does, its formulas, what it tells, its limits, source and our readings.
 *
 * @param claim what follows from the known truth for its claim, a sentence; empty where it makes none
 */
export function methodSection(title: string, method: ToldMethod, claim: string): Statement[] {
  const led = (lead: string, text: string) => (text === "" ? "" : `<p><b>${lead}</b> ${text}</p>`);
  return section(
    title,
    `<p>${method.does}</p>`,
    method.formulas.map((formula) => `<p class="formula">${formula}</p>`).join(""),
    led("It tells", [method.tells, claim].filter(Boolean).join(" ")),
    led("It does not tell", method.tellsNot),
    led("It speaks", method.speaks),
    led("With few data:", method.few),
    led("Source:", method.source),
    led("Our reading:", method.reading),
  );
}

/** A whole number with commas at thousands. @example number(1379) // => "1,379" */
export function number(value: number): string {
  return value.toLocaleString("en-GB");
}

/** A share as a whole percentage. @example percent(0.5) // => "50 %" */
export function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}
