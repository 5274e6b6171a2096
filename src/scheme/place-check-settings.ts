/** Settings of the checks of place, date and text. */
import { z } from "zod";

/** When records of one list, day, recorder or locality are taken to belong together. */
export const ListSettings = z.strictObject({
  together_m: z
    .number()
    .positive()
    .default(1_000)
    .describe(
      "metres within which two places are one; a list's rows are seldom further apart. Common practice, no source",
    ),
  far_m: z
    .number()
    .positive()
    .default(5_000)
    .describe(
      "metres from both neighbours beyond which a row between two that agree is asked about; a walk reaches into neighbouring squares and seldom further",
    ),
  usual_records: z
    .int()
    .min(3)
    .default(10)
    .describe("records of a recorder or locality, in a source, from which a usual place is taken; fewer show no habit"),
  usual_share: z
    .number()
    .gt(0.5)
    .max(1)
    .default(0.8)
    .describe(
      "share of them that must have one and the same place; and share of a recorder's rows between two alike that must be like them before one that is not is asked about",
    ),
  most_places: z
    .int()
    .min(2)
    .default(30)
    .describe("places of one recorder's day beyond which it is a group's or a collection's, and says nothing"),
});

/** How far one person gets in a day. */
export const TravelSettings = z.strictObject({
  far_km: z
    .number()
    .positive()
    .default(150)
    .describe("kilometres from the rest of a recorder's day that are asked about; two hours' drive, no source"),
  others: z.int().min(1).default(3).describe("records of the day that must lie together elsewhere"),
});

/** When a day is one that a program or a form filled in. */
export const DefaultDateSettings = z.strictObject({
  times: z
    .number()
    .min(2)
    .default(5)
    .describe(
      "how many times as many lists (records of one recorder and day) as its neighbouring days a day of the year must have, in one source",
    ),
  lists: z.int().min(2).default(5).describe("lists a day must have before it is looked at; fewer may be chance"),
  years: z
    .int()
    .min(1)
    .default(3)
    .describe("years they must be of; many lists on one day of one year are an event, not a habit of a form"),
  days: z
    .int()
    .min(3)
    .default(7)
    .describe("days before and after it that are its neighbours; a week evens out weekends"),
  chance: z
    .number()
    .positive()
    .default(0.000001)
    .describe(
      "probability below which as many lists are no chance, by the Poisson distribution; a source has 366 days that are looked at",
    ),
});

/** When one point stands for a whole site. */
export const SitePointSettings = z.strictObject({
  records: z.int().min(2).default(20).describe("records on one exact point or square of at most 100 m"),
  days: z.int().min(2).default(8).describe("different days among them"),
  recorders: z
    .int()
    .min(2)
    .default(4)
    .describe("different recorders among them; one alone may stand at one spot for years"),
});
