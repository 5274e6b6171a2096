/** The contract of a species account: front matter and prose sections. */
import { z } from "zod";
import { Mistake } from "../mistake.ts";
import { parseYaml } from "./yaml-file.ts";

export const AccountFrontMatter = z.strictObject({
  taxonID: z.string().describe("id of the taxon in checklist.csv"),
  lead: z.string().default("").describe("one sentence under the name"),
  evidence: z.string().default("").describe("what a record needs, in words"),
  sizes: z
    .array(z.strictObject({ caste: z.string(), mm: z.tuple([z.number(), z.number()]), note: z.string().default("") }))
    .default([]),
  look_alikes: z
    .array(
      z
        .strictObject({
          taxonID: z.string().optional(),
          outside: z.string().optional(),
          difference: z.string().default(""),
        })
        .refine(
          (look) => (look.taxonID === undefined) !== (look.outside === undefined),
          "give either taxonID or outside",
        ),
    )
    .default([]),
});

/** A scheme's own page. */
export const PageFrontMatter = z.strictObject({
  title: z.string(),
  lead: z.string().default(""),
  footer: z.boolean().default(true),
});

/** A Markdown file taken apart: its front matter by a contract, and its prose by second-level headings. */
export interface TextFile<FrontMatter> {
  file: string;
  front: FrontMatter;
  /** Sections in order; the text before the first heading has the title "". Bodies are Markdown. */
  sections: { title: string; body: string }[];
}

export type Account = TextFile<z.infer<typeof AccountFrontMatter>>;
export type SchemePage = TextFile<z.infer<typeof PageFrontMatter>> & { slug: string };

/**
 * Takes a Markdown file with YAML front matter apart.
 *
 * @throws {Mistake} without front matter, or where the contract refuses a value
 * @example parseTextFile("---\ntitle: About\n---\nText", "pages/about.md", PageFrontMatter).sections // => [{ title: "", body: "Text" }]
 */
export function parseTextFile<T>(text: string, file: string, contract: z.ZodType<T>): TextFile<T> {
  const match = text
    .replace(/^\uFEFF/, "")
    .replaceAll("\r\n", "\n")
    .match(/^---\n([\s\S]*?)\n---\n?([\s\S]*)$/);
  if (match === null)
    throw new Mistake("the front matter", "is missing", "begin the file with a block between two lines ---", {
      file,
      line: 1,
      column: 1,
    });
  const front = parseYaml(match[1] ?? "", file, contract, 2);
  const sections = (match[2] ?? "").split(/^(?=## )/m).flatMap((part) => {
    const heading = part.match(/^## (.*)\n?/);
    const body = (heading === null ? part : part.slice(heading[0].length)).trim();
    return heading === null && body === "" ? [] : [{ title: heading?.[1]?.trim() ?? "", body }];
  });
  return { file, front, sections };
}
