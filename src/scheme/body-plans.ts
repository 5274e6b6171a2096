/**
 * Body plans that are drawn, and their parts in the order of the rows. The shapes stand with the pages, which may not be
 * read from here: a test keeps both in step.
 */
export const BODY_PLANS = {
  bee: [
    "antennae",
    "face",
    "eyes",
    "collar",
    "mid-thorax",
    "rear-thorax",
    ...["T1", "T2", "T3", "T4", "T5", "T6"],
    "hind-leg",
    "wings",
  ],
  hoverfly: [
    "antennae",
    "face",
    "eyes",
    "collar",
    "mid-thorax",
    "rear-thorax",
    ...["T1", "T2", "T3", "T4", "T5"],
    "hind-leg",
    "wings",
  ],
  damselfly: [
    "face",
    "eyes",
    "collar",
    "mid-thorax",
    "hind-leg",
    ...["S1", "S2", "S3", "S4", "S5", "S6", "S7", "S8", "S9", "S10"],
    "wings",
  ],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** Id of a body plan that is drawn. */
export type BodyPlanId = keyof typeof BODY_PLANS;

/** What is looked at beside the parts that are drawn. */
export const OTHER_PARTS = [
  "size",
  "coat",
  "face-length",
  "antenna",
  "voice",
  "tail",
  "tip",
  "wing-base",
  "wing-pairs",
  "underside",
  "tongue",
  "flight",
  "waist",
  "legs",
  "behaviour",
] as const;
