/** How the identification helper does where the truth is known. */
import { z } from "zod";
import { count } from "./number-kinds.ts";

const share = z.number().min(0).max(1);

/** What the helper says when it is told so much. Shares are of the sightings. */
const Row = z.strictObject({
  characters: count.describe("characters told"),
  place: z.boolean(),
  date: z.boolean(),
  sightings: count,
  first: share.describe("the true taxon is first"),
  first_or_group: share.describe("it is first, or the group that is offered holds it"),
  first_three: share,
  wrong_at_nine: share.describe("a wrong taxon is first with at least 9 in 10"),
  wrong_at_seven: share,
});

/** `identify-truth.json`: trials on invented sightings of the demonstration. */
export const IdentifyTruthFile = z.strictObject({
  made: z.strictObject({ seed: z.int(), sightings: count, records: count }),
  rows: z.array(Row),
  tenths: z
    .array(z.strictObject({ from: share, sightings: count, said: share, right: share }))
    .describe("of first candidates by tenths of the chance they were given: the mean chance, and how many were right"),
  taxa: z.array(
    z.strictObject({
      taxon: z.string(),
      sightings: count,
      first: share,
      first_or_group: share,
      first_three: share,
    }),
  ),
  groups: z.strictObject({ offered: count, right: share, said: share }),
});
export type IdentifyTruthFile = z.infer<typeof IdentifyTruthFile>;
