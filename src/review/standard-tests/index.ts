/**
 * The draft BDQ tests of TDWG that are made here (snapshot 2026-07-29, CC BY 4.0 where stated): those that need nothing
 * but the record, those whose list of values a standard gives, and those whose list the scheme has. Every amendment is a
 * proposal for a person.
 */
import { CALENDAR_TESTS } from "./calendar-tests.ts";
import { DATE_TESTS } from "./date-tests.ts";
import { EVENT_AMENDMENTS } from "./event-amendments.ts";
import { FILLED_TESTS } from "./filled-tests.ts";
import { NAME_TESTS } from "./name-tests.ts";
import { NUMBER_TESTS } from "./number-tests.ts";
import { PLACE_AMENDMENTS } from "./place-amendments.ts";
import type { StandardTest } from "./standard-test.ts";
import { STATUS_AMENDMENTS } from "./status-amendments.ts";
import { VOCABULARY_TESTS } from "./vocabulary-tests.ts";
import { WRITTEN_AMENDMENTS } from "./written-amendments.ts";

/** Every test made here. */
export const STANDARD_TESTS: readonly StandardTest[] = [
  ...FILLED_TESTS,
  ...NUMBER_TESTS,
  ...DATE_TESTS,
  ...CALENDAR_TESTS,
  ...NAME_TESTS,
  ...VOCABULARY_TESTS,
  ...EVENT_AMENDMENTS,
  ...WRITTEN_AMENDMENTS,
  ...PLACE_AMENDMENTS,
  ...STATUS_AMENDMENTS,
];
