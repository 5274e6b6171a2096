/** The part of `atlas.yaml` that says how records are checked: thresholds of our own checks, and how much each finding matters. */
import { z } from "zod";

/** Settings of the checks; every threshold has a default and its reason. */
export const CheckSettings = z.strictObject({
  severity: z
    .record(z.string(), z.enum(["blocks", "ask", "note", "off"]))
    .default({})
    .describe(
      "how much a check's finding matters, by the check's name: blocks holds the record until somebody rules, ask and note do not, off is silent",
    ),
});
export type CheckSettings = z.infer<typeof CheckSettings>;
