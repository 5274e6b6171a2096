import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { offlineList } from "./offline-list.ts";

/**
 * Writes `offline.json` of each language into a whole atlas: what its worker keeps on a device.
 *
 * @param languages further languages, each a folder of the atlas
 * @example writeOffline("atlas", ["fr"], "2025.1") // atlas/offline.json and atlas/fr/offline.json
 */
export function writeOffline(atlas: string, languages: readonly string[], edition: string): void {
  for (const language of ["", ...languages]) {
    const list = offlineList(atlas, language, edition);
    writeFileSync(join(atlas, language, "offline.json"), `${JSON.stringify(list)}\n`);
  }
}
