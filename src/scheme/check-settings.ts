/** The part of `atlas.yaml` that says how records are checked: thresholds of our own checks, and how much each finding matters. */
import { z } from "zod";
import { DefaultDateSettings, ListSettings, SitePointSettings, TravelSettings } from "./place-check-settings.ts";
import { EvidenceSettings, ShareSettings, UnexpectedSettings } from "./species-check-settings.ts";

/** Settings of the checks; every threshold has a default and its reason. */
export const CheckSettings = z.strictObject({
  severity: z
    .record(z.string(), z.enum(["blocks", "ask", "note", "off"]))
    .default({})
    .describe(
      "how much a check's finding matters, by the check's name: blocks holds the record until somebody rules, ask and note do not, off is silent",
    ),
  unexpected: UnexpectedSettings.prefault({}).describe("when a record is unexpected here and now"),
  evidence: EvidenceSettings.prefault({}).describe("which evidence records need"),
  shares: ShareSettings.prefault({}).describe("when somebody's share of a taxon is far from their neighbours'"),
  lists: ListSettings.prefault({}).describe("when records of one list, day, recorder or locality belong together"),
  travel: TravelSettings.prefault({}).describe("how far one person gets in a day"),
  default_dates: DefaultDateSettings.prefault({}).describe("when a date is one that a program or a form filled in"),
  site_points: SitePointSettings.prefault({}).describe("when one point stands for a whole site"),
});
export type CheckSettings = z.infer<typeof CheckSettings>;
