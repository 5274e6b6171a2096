import type { Check } from "../check.ts";

/** Every check of the whole of the records, in the order they run. One file each. */
export const CHECKS: readonly Check[] = [];
