/** What the printed book is made of: chapters are built pages, in the order of the book. */
import { z } from "zod";

export const BookChapter = z.strictObject({
  path: z.string().describe("address of the built page, from the top of the host"),
  title: z.string(),
  note: z.string().describe("beside the title in the contents, a scientific name; or empty"),
});
export type BookChapter = z.infer<typeof BookChapter>;

export const BookFile = z.strictObject({
  language: z.string(),
  title: z.string(),
  heading: z.string(),
  summary: z.string(),
  edition: z.string().describe("in words"),
  day: z.iso.date().describe("of the edition"),
  notice: z.string().describe("that the records are invented, or empty"),
  imprint: z.array(z.strictObject({ title: z.string(), html: z.string() })),
  words: z.strictObject({ contents: z.string(), index: z.string() }),
  parts: z.array(z.strictObject({ title: z.string(), chapters: z.array(BookChapter) })),
  names: z
    .array(z.strictObject({ name: z.string(), scientific: z.boolean(), path: z.string() }))
    .describe("for the index, sorted for the language"),
});
export type BookFile = z.infer<typeof BookFile>;
