/** What the methods of change say of invented species whose change is known, and so what each may claim. */
import { z } from "zod";
import { count } from "./number-kinds.ts";

const share = z.number().min(0).max(1);

/** One method under one way of recording: of species that do not change, or of species that changed by a known amount. */
export const KnownTruthRow = z.strictObject({
  method: z.string().describe("a method of change, or another measure shown beside them, such as raw counts"),
  scenario: z.string().describe("id of how recording changed between the periods"),
  label: z.string().describe("the same in words"),
  change_percent: z.number().describe("true change of the species, 0 where none changes"),
  taxa: count.describe("species the method spoke of, over all seeds"),
  silent: count.describe("species it was silent about"),
  called_more: share.nullable().describe("share of those it spoke of called increased; null where it spoke of none"),
  called_fewer: share.nullable(),
  bias: z
    .number()
    .nullable()
    .describe("mean estimate less the truth, in the method's unit; null without a truth in it"),
  coverage: share
    .nullable()
    .describe("share of 95 % intervals that hold the truth; null without a truth in their unit"),
});
export type KnownTruthRow = z.infer<typeof KnownTruthRow>;

/** Whether a method's claim to correct for recording stands, derived from the rows. */
export const MethodClaim = z.strictObject({
  method: z.string(),
  claim: z.enum(["none", "untested", "kept", "withdrawn"]).describe("none: the method claims no correction"),
  reason: z.string().describe("empty, or the first target it missed, in words"),
});
export type MethodClaim = z.infer<typeof MethodClaim>;

export const KnownTruthFile = z.strictObject({
  made: z.string().describe("how the table was made, with its seeds; empty where there is none"),
  rows: z.array(KnownTruthRow),
  claims: z.array(MethodClaim).describe("one a method of change"),
});
export type KnownTruthFile = z.infer<typeof KnownTruthFile>;
