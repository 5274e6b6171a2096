import type { Check } from "../check.ts";
import { PLACE_CHECKS } from "./place-checks.ts";
import { SPECIES_CHECKS } from "./species-checks.ts";

/** Every check of the whole of the records, in the order they run. One file each. */
export const CHECKS: readonly Check[] = [...PLACE_CHECKS, ...SPECIES_CHECKS];
