import type { Check } from "../check.ts";
import { atSea } from "./at-sea.ts";
import { dateHeaping } from "./date-heaping.ts";
import { datesExchanged } from "./dates-exchanged.ts";
import { defaultDate } from "./default-date.ts";
import { farInADay } from "./far-in-a-day.ts";
import { licenceStricter, licenceUnknown } from "./licence-stricter.ts";
import { namedSitePoint } from "./named-site-point.ts";
import { oddRowInList } from "./odd-row-in-list.ts";
import { placeSlip } from "./place-slip.ts";
import { projectionOffset } from "./projection-offset.ts";
import { recordedAfterIdentified } from "./recorded-after-identified.ts";
import { referenceInText } from "./reference-in-text.ts";
import { regionDisagrees } from "./region-disagrees.ts";

/** Checks of place, date and text. What can name the slip comes first; those after it are silent about the same record. */
export const PLACE_CHECKS: readonly Check[] = [
  placeSlip,
  projectionOffset,
  datesExchanged,
  oddRowInList,
  farInADay,
  atSea,
  defaultDate,
  dateHeaping,
  namedSitePoint,
  regionDisagrees,
  recordedAfterIdentified,
  referenceInText,
  licenceStricter,
  licenceUnknown,
];
