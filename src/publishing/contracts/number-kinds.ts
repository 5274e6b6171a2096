/** What the contracts share. */
import { z } from "zod";

export const count = z.int().nonnegative();
export const year = z.int();

/** A period with explicit years, both inclusive. `from` is null only for a period open at the left. */
export const Period = z.strictObject({
  id: z.string(),
  label: z.string().describe("as shown, for example 1990–2005"),
  from: year.nullable(),
  to: year,
});
export type Period = z.infer<typeof Period>;
