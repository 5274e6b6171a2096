import type { Check } from "../check.ts";
import { evidenceMissing } from "./evidence-missing.ts";
import { shareFarFromNeighbours } from "./share-far-from-neighbours.ts";
import { unexpectedPlaceSeason } from "./unexpected-place-season.ts";

/** Checks on species: whether they are expected there and then, on what evidence, and whose share of them is odd. */
export const SPECIES_CHECKS: readonly Check[] = [unexpectedPlaceSeason, evidenceMissing, shareFarFromNeighbours];
