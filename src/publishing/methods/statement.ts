import type { AtlasFile } from "../contracts.ts";

/**
 * One sentence or paragraph of the methods page: the section it stands in, which is its place on the page, and the key of
 * its words with what they need. The site has the words, in each of its languages, under `methods.`.
 */
export type Statement = AtlasFile["methods"][number];

/** What the words of a statement need; a further statement where they hold one. */
export type StatementValues = Statement["values"];

/** A statement without its section. */
export type Told = Pick<Statement, "key" | "values">;

/** What follows from the known truth for a method's claim; empty where it makes none. */
export type ClaimTold = "" | { readonly key: string; readonly values: Record<string, string> };

/** A statement by its key. @example told("names") // => { key: "methods.names", values: {} } */
export function told(key: string, values: StatementValues = {}): Told {
  return { key: `methods.${key}`, values };
}

/**
 * Statements in one section; what is left out is null.
 *
 * @example section("change", told("change"), null) // => [{ section: "change", key: "methods.change", values: {} }]
 */
export function section(id: string, ...statements: readonly (Told | null)[]): Statement[] {
  return statements.filter((one) => one !== null).map((one) => ({ section: id, ...one }));
}

/** A share in whole per cent. @example percent(0.5) // => 50 */
export function percent(share: number): number {
  return Math.round(share * 100);
}
