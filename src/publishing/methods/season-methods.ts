import type { Scheme } from "../../scheme/scheme.ts";

/** What the methods page says of seasons and how they move. */
export function seasonSentences({ settings: { season, castes } }: Scheme): string[] {
  const kinds =
    castes.length === 0
      ? ""
      : " Each caste stands for itself, and records that state none are a class of their own, never shared out.";
  return [
    `A season is given by the days by which a tenth, a quarter, half, three quarters and nine tenths of the records or visits had been made: quantiles of type 8 (Hyndman and Fan 1996). There is no earliest date, for it moves with the number of records alone.${kinds} Only records dated to one day count. Specimens, literature and finds of nests do not: they tell where it lived, not when it is about. With fewer than ${season.minimum_records} records or visits no date is given.`,
    `A visit counts once, however many records it left. Evenly weighed, a visit counts for the days of its third of a month over the visits anybody made in it, as though every day of the year had been visited equally often; thirds with fewer than ${season.minimum_visits} visits have no such weight. Visits exist only where something of the group was seen: what they give is a share of visits, not numbers of animals.`,
    "The interval of the median takes dates as the sampling unit, since what is recorded on one day shares its weather: the exact binomial one for the size that tells as much (Woodruff 1952, Korn and Graubard 1998).",
    `A shift is told in days a decade, from everyday recording of settled years with ${season.minimum_records_a_year} visits or more, where there are ${season.minimum_years} such years. The quantile regression of the day on the year (Koenker and Bassett 1978) allows for latitude, territory and caste, and evens out when in the year people went recording and stated castes, about five years at a time; latitude is that of the 10 km square as shown. Its interval comes of 400 draws of whole years, which share their weather (Andrews 2002), with Student’s distribution for the number of years. Beside it stands the median slope (Theil 1950, Sen 1968) through the years’ medians, with the same allowed for and as recorded; the last moves with where and when people record.`,
    "No shift is told where castes are about at different times and fewer than half of the visits state one, where more than a fifth of the visits have no square to tell their latitude, where too few years were visited all through its season (early ones that were not are left out), or where latitude or caste changed so steadily with the years that they cannot be told apart. Height above the sea and generations are not allowed for.",
  ];
}
