/** What the methods of change say of invented species whose change is known, and so what each may claim. */
import { z } from "zod";
import { count } from "./number-kinds.ts";

const share = z.number().min(0).max(1);

/** Largest share of unchanged species that a method may call changed, and bounds of the share of 95 % intervals that hold the truth. */
export const TARGETS = Object.freeze({ called: 0.05, coverage: [0.92, 0.97] as readonly [number, number] });

/** Species of one true change, of those a method spoke of. */
export const KnownChange = z.strictObject({
  change: z.number().describe("true change of the number of squares lived in, %"),
  judged: count,
  more: count,
  fewer: count,
  coverage: share.nullable(),
});
export type KnownChange = z.infer<typeof KnownChange>;

/** One method under one way in which recording changed between the periods. */
export const KnownTruthRow = z.strictObject({
  method: z.string().describe("a method of change, or a measure no page shows: raw_counts"),
  scenario: z.string(),
  label: z.string().describe("how recording changed, in words"),
  estimand: z.string().describe("what the method's figure is held against, in words"),
  species: count.describe("over all seeds"),
  judged: count.describe("species the method spoke of"),
  called: share.nullable().describe("share of those called increased or decreased; null where it spoke of none"),
  called_error: z.number().nullable().describe("standard error of that share, over seeds"),
  median_bias: z.number().nullable().describe("estimate less truth, in the method's unit; null without a truth in it"),
  coverage: share
    .nullable()
    .describe("share of 95 % intervals that hold the truth; null without a truth in their unit"),
  by_change: z.array(KnownChange).describe("one row of change 0 where no species changes"),
});
export type KnownTruthRow = z.infer<typeof KnownTruthRow>;

/** Whether a method's claim to correct for recording stands, derived from the rows. */
export const MethodClaim = z.strictObject({
  method: z.string(),
  claim: z
    .enum(["none", "rank", "untested", "kept", "withdrawn"])
    .describe("none: the method claims no correction; rank: it ranks a group, of which it calls few by construction"),
  reason: z.string().describe("empty, or the first target it missed, in words"),
});
export type MethodClaim = z.infer<typeof MethodClaim>;

export const KnownTruthFile = z.strictObject({
  made: z.string().describe("how the table was made, with its seeds; empty where there is none"),
  rows: z.array(KnownTruthRow),
  claims: z.array(MethodClaim).describe("one a method of change"),
});
export type KnownTruthFile = z.infer<typeof KnownTruthFile>;
