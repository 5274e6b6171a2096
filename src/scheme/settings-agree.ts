import { Mistake } from "../mistake.ts";
import type { Settings } from "./settings.ts";

/**
 * Checks what the contract of one setting alone cannot see: that settings agree with each other.
 *
 * @throws {Mistake} on the first pair that does not agree
 */
export function checkSettings(settings: Settings): void {
  const where = { file: "atlas.yaml" };
  const unique = (name: string, ids: string[]) => {
    const twice = ids.find((id, index) => ids.indexOf(id) !== index);
    if (twice !== undefined) throw new Mistake(`${name} “${twice}”`, "is there twice", "give each its own id", where);
  };
  unique(
    "period",
    settings.periods.map((period) => period.id),
  );
  unique(
    "territory",
    settings.territories.map((territory) => territory.id),
  );
  unique(
    "source",
    settings.sources.map((source) => source.id),
  );
  unique(
    "caste",
    settings.castes.map((caste) => caste.id),
  );
  for (const { id, within } of settings.castes)
    if (within !== undefined && !settings.castes.some((caste) => caste.id === within))
      throw new Mistake(
        `caste ${id}`,
        `is within “${within}”, which is no caste`,
        "name another caste, or leave within out",
        where,
      );
  settings.periods.forEach((period, index) => {
    const earlier = settings.periods[index - 1];
    if (period.from === null && index > 0)
      throw new Mistake(`period ${period.id}`, "is open at the left but not the first", "give it a first year", where);
    if (period.from !== null && period.to < period.from)
      throw new Mistake(
        `period ${period.id}`,
        `ends in ${period.to}, before its start ${period.from}`,
        "correct one of the years",
        where,
      );
    if (earlier !== undefined && period.from !== null && period.from <= earlier.to)
      throw new Mistake(
        `period ${period.id}`,
        `starts in ${period.from}, when ${earlier.id} has not ended (${earlier.to})`,
        "put periods in order without overlap",
        where,
      );
  });
  for (const id of settings.compared ?? [])
    if (!settings.periods.some((period) => period.id === id))
      throw new Mistake(
        `compared “${id}”`,
        "is no period",
        `write two of ${settings.periods.map((period) => period.id).join(", ")}`,
        where,
      );
  if (settings.territories.length > 1 && settings.territory_polygons === undefined)
    throw new Mistake(
      "territory_polygons",
      "is missing",
      "with more than one territory, name a GeoJSON file with their polygons",
      where,
    );
}

/** The two periods compared on maps, as indexes into `settings.periods`; null with one period only. */
export function comparedPeriods(settings: Settings): [number, number] | null {
  if (settings.periods.length < 2) return null;
  if (settings.compared === undefined) return [0, settings.periods.length - 1];
  const index = (id: string) => settings.periods.findIndex((period) => period.id === id);
  return [index(settings.compared[0]), index(settings.compared[1])];
}
