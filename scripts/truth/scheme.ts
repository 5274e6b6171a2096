import { buildChecklist } from "../../src/names/checklist.ts";
import type { Scheme } from "../../src/scheme/scheme.ts";
import { Settings } from "../../src/scheme/settings.ts";
import type { Period } from "./recording.ts";

const TERRITORIES = [
  { id: "britain", name: "Britain", grid: "british" },
  { id: "ireland", name: "Ireland", grid: "irish" },
  { id: "channel-islands", name: "Channel Islands", grid: "channel-islands" },
];

/** One source of each way of recording. */
const SOURCES = [
  { id: "walks" },
  { id: "pictures", kind: "photograph" },
  { id: "week", mass_event: true },
  { id: "museum", kind: "specimen" },
];

/**
 * What the measures read of a scheme, with every setting at its default.
 *
 * @param taxa ids of the group, none within another
 * @param changed settings other than their defaults
 */
export function schemeOf(taxa: readonly string[], periods: readonly Period[], changed: object = {}): Scheme {
  const settings = Settings.parse({
    title: "An invented group",
    invented: true,
    edition: { id: "1", date: "2025-01-01" },
    periods,
    territories: TERRITORIES,
    sources: SOURCES.map((source) => ({ ...source, files: `${source.id}.csv` })),
    ...changed,
  });
  const checklist = buildChecklist(
    taxa.map((taxonId) => ({
      taxonId,
      scientificName: `Inventus ${taxonId}`,
      authorship: "",
      rank: "species",
      synonyms: [],
      vernacular: {},
      within: [],
      castes: [],
    })),
  );
  const territories = TERRITORIES.map((one) => ({ ...one, datum: "ED50", polygon: null, gridShift: null }));
  const rows = taxa.map((taxonID) => ({ taxonID, within: [] }));
  const scheme = { settings, taxa: rows, checklist, territories, landSquares: null, sensitive: [], regions: [] };
  return scheme as unknown as Scheme;
}
