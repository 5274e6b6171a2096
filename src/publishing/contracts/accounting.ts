/** What became of the records, and the files for researchers. */
import { z } from "zod";
import { count } from "./number-kinds.ts";

/** What became of the records. The rows of one source add up to its `read`. */
export const AccountingFile = z.strictObject({
  read: count,
  rows: z.array(
    z.strictObject({
      source: z.string(),
      status: z.enum(["used", "held", "not used"]),
      reason: z.string(),
      records: count,
    }),
  ),
  sources: z.array(
    z.strictObject({
      source: z.string(),
      title: z.string(),
      kind: z.string(),
      licence: z.string(),
      read: count,
      used: count,
    }),
  ),
  squares_by_reason: z
    .array(z.strictObject({ resolution_m: z.int(), reason: z.string(), records: count }))
    .describe("used records that support no square"),
  tetrads_at_half_overlap: count.describe("further record–tetrad pairs an overlap of 0.5 would add"),
  findings: z.array(
    z.strictObject({
      check: z.string(),
      severity: z.enum(["blocks", "ask", "note"]),
      records: count,
      title: z.string(),
    }),
  ),
});
export type AccountingFile = z.infer<typeof AccountingFile>;

export const DownloadsFile = z.strictObject({
  edition: z.string(),
  files: z.array(
    z.strictObject({
      path: z.string().describe("relative to data/<edition>/"),
      table: z.string(),
      title: z.string(),
      format: z.string(),
      rows: count.nullable(),
      bytes: count,
      sha256: z.string(),
      fields: z.array(z.strictObject({ name: z.string(), type: z.string(), description: z.string() })),
    }),
  ),
});
export type DownloadsFile = z.infer<typeof DownloadsFile>;
