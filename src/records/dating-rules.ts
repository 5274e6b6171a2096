import type { Scheme } from "../scheme/scheme.ts";
import { type DatingRules, dayOf } from "./interpret-dates.ts";

/** What the settings say about reading dates, for each source by its id. */
export function datingRules({ settings }: Scheme): Map<string, DatingRules> {
  return new Map(
    settings.sources.map((source) => [
      source.id,
      {
        intervalEnd: settings.dates.interval_end,
        format: source.date_format,
        ...(source.two_digit_pivot === undefined ? {} : { twoDigitPivot: source.two_digit_pivot }),
        periods: settings.periods,
        lastDay: dayOf(settings.edition.date),
      },
    ]),
  );
}
