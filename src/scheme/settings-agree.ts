import { resolveCrs } from "../geodesy/resolve-crs.ts";
import { Mistake, type Whereabouts } from "../mistake.ts";
import { GRID_TERRITORIES } from "./grid-territories.ts";
import type { Settings } from "./settings.ts";

/**
 * Checks what the contract of one setting alone cannot see: that settings agree with each other.
 *
 * @param at where a setting stands, as `readYaml` gives it; without it messages name the file alone
 * @throws {Mistake} on the first pair that does not agree
 * @example checkSettings({ ...settings, compared: ["earlier", "later"] }) // throws: compared “later” is no period; …
 */
export function checkSettings(
  settings: Settings,
  at: (path: readonly PropertyKey[]) => Whereabouts = () => ({ file: "atlas.yaml" }),
): void {
  for (const list of ["periods", "territories", "sources", "castes", "first_seen"] as const)
    settings[list].forEach(({ id }, index) => {
      if (settings[list].findIndex((other) => other.id === id) < index)
        throw new Mistake(`${list}: id “${id}”`, "is there twice", "give each its own id", at([list, index, "id"]));
    });
  for (const [list, reserved] of [
    ["periods", "outside"],
    ["periods", "all"],
    ["territories", "all"],
    ["castes", "not_stated"],
    ["castes", "all"],
  ] as const) {
    const index = settings[list].findIndex(({ id }) => id === reserved);
    if (index >= 0)
      throw new Mistake(
        `${list}: id “${reserved}”`,
        "means something else in the tables",
        "give it another id",
        at([list, index, "id"]),
      );
  }
  checkPeriods(settings, at);
  const periods = settings.periods.map((period) => period.id);
  settings.compared?.forEach((id, index) => {
    if (!periods.includes(id))
      throw new Mistake(
        `compared “${id}”`,
        "is no period",
        `write two of ${periods.join(", ")}`,
        at(["compared", index]),
      );
  });
  settings.castes.forEach(({ id, within }, index) => {
    if (within !== undefined && !settings.castes.some((caste) => caste.id === within))
      throw new Mistake(
        `caste ${id}`,
        `is within “${within}”, which is no caste`,
        "name another caste, or leave within out",
        at(["castes", index, "within"]),
      );
  });
  settings.sources.forEach((source, index) => {
    for (const field of ["datum", "crs"] as const) {
      const text = source[field];
      if (text !== undefined && resolveCrs(text) === undefined)
        throw new Mistake(
          `source ${source.id}: ${field}`,
          `is “${text}”, which is not known here`,
          "write a code such as EPSG:4326 or EPSG:27700",
          at(["sources", index, field]),
        );
    }
  });
  if (settings.territory_polygons === undefined) checkTerritories(settings, at);
}

/** Without polygons of the scheme's own, territories are told apart by their grids, and only national grids have a place. */
function checkTerritories({ territories }: Settings, at: (path: readonly PropertyKey[]) => Whereabouts): void {
  const wayOut = "name a GeoJSON file with the polygons of all territories";
  if (territories.length === 1) return;
  territories.forEach(({ id, grid }, index) => {
    const other = territories.find((one, before) => before < index && one.grid === grid);
    if (other !== undefined)
      throw new Mistake(
        "territory_polygons",
        `is missing, and ${other.id} and ${id} use the same grid`,
        wayOut,
        at(["territories", index, "grid"]),
      );
    if (GRID_TERRITORIES[grid] === undefined)
      throw new Mistake(
        "territory_polygons",
        `is missing, and the ${grid} grid of ${id} is used in many countries`,
        wayOut,
        at(["territories", index, "grid"]),
      );
  });
}

function checkPeriods({ periods }: Settings, at: (path: readonly PropertyKey[]) => Whereabouts): void {
  periods.forEach((period, index) => {
    const earlier = periods[index - 1];
    if (period.from === null && index > 0)
      throw new Mistake(
        `period ${period.id}`,
        "is open at the left but not the first",
        "give it a first year",
        at(["periods", index, "from"]),
      );
    if (period.from !== null && period.to < period.from)
      throw new Mistake(
        `period ${period.id}`,
        `ends in ${period.to}, before its start ${period.from}`,
        "correct one of the years",
        at(["periods", index, "to"]),
      );
    if (earlier !== undefined && period.from !== null && period.from <= earlier.to)
      throw new Mistake(
        `period ${period.id}`,
        `starts in ${period.from}, when ${earlier.id} has not ended (${earlier.to})`,
        "put periods in order without overlap",
        at(["periods", index, "from"]),
      );
  });
}

/** The two periods compared on maps, as indexes into `settings.periods`; null with one period only. */
export function comparedPeriods(settings: Settings): [number, number] | null {
  if (settings.periods.length < 2) return null;
  if (settings.compared === undefined) return [0, settings.periods.length - 1];
  const index = (id: string) => settings.periods.findIndex((period) => period.id === id);
  return [index(settings.compared[0]), index(settings.compared[1])];
}
