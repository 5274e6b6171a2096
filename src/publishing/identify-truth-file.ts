import { readFileSync } from "node:fs";
import { IdentifyTruthFile } from "./contracts/identify-truth.ts";

/**
 * The trials of the identification helper as `npm run identify-truth -- --write` leaves them.
 *
 * @example identifyTruthFile().made.sightings // => 2000
 */
export function identifyTruthFile(): IdentifyTruthFile {
  return IdentifyTruthFile.parse(JSON.parse(readFileSync(new URL("identify-truth.json", import.meta.url), "utf8")));
}
