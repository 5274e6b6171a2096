import { findingTitle } from "../../records/finding-titles.ts";
import { CORRECTABLE, IDENTIFICATIONS } from "../../scheme/decisions-file.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { comparedPeriods } from "../../scheme/settings-agree.ts";
import type { Choice, DeskAnswer } from "./answers.ts";
import type { Desk } from "./desk.ts";

const MOST_RECORDERS = 200;
const MOST_REASONS = 12;

/** What the desk knows before a record is opened: the scheme's words, and what the worklist can be narrowed by. */
export async function overviewOf(desk: Desk): Promise<DeskAnswer> {
  const { scheme } = desk;
  const { settings } = scheme;
  return {
    title: settings.title,
    group: settings.group,
    invented: settings.invented,
    periods: periodsOf(scheme),
    taxa: scheme.taxa.map(({ taxonID, scientificName, synonyms, vernacularNames, shortName }) => ({
      id: taxonID,
      name: scientificName,
      vernacular: vernacularNames[0]?.name ?? "",
      words: [scientificName, shortName, ...synonyms, ...vernacularNames.map(({ name }) => name)]
        .join(" ")
        .toLowerCase(),
    })),
    castes: settings.castes.map(({ id, label }) => ({ id, label })),
    parts: [...new Set(scheme.characters.map(({ part }) => part))],
    identifications: IDENTIFICATIONS.slice(1),
    correctable: [...CORRECTABLE],
    reasons: reasonsOf(desk),
    choices: await choicesOf(desk),
    credit: settings.basemap?.credit ?? "",
  };
}

/** Reasons given in rulings, the latest first, each once. */
export function reasonsOf({ decisions }: Pick<Desk, "decisions">): string[] {
  const given = decisions.map(({ why }) => why).filter(Boolean);
  return [...new Set(given.reverse())].slice(0, MOST_REASONS);
}

function periodsOf({ settings }: Scheme): [string, string] {
  const label = (index: number) => {
    const period = settings.periods[index];
    return period === undefined ? "" : period.from === null ? `to ${period.to}` : `${period.from}–${period.to}`;
  };
  const [earlier, recent] = comparedPeriods(settings) ?? [-1, settings.periods.length - 1];
  return [label(earlier), label(recent)];
}

async function choicesOf({ database, scheme }: Desk): Promise<DeskAnswer["choices"]> {
  const by = async (column: string, label: (value: string) => string, most = 1000): Promise<Choice[]> => {
    const rows = await database.rows<{ value: string; records: number }>(
      `SELECT ${column} AS value, count(DISTINCT record_no) AS records FROM worklist WHERE ${column} <> '' GROUP BY ALL ORDER BY records DESC, value LIMIT ${most}`,
    );
    return rows.map(({ value, records }) => ({ value, label: label(value), records }));
  };
  const { sources, territories } = scheme.settings;
  const written = await database.rows<{ recorder: string; name: string }>(
    "SELECT recorder, min(recorded_by) AS name FROM worklist GROUP BY recorder",
  );
  const names = new Map(written.map(({ recorder, name }) => [recorder, name]));
  return {
    check: await by("check_name", findingTitle),
    severity: await by("severity", (value) => (value === "blocks" ? "holds the record" : "asks")),
    source: await by("source", (value) => sources.find(({ id }) => id === value)?.title || value),
    taxon: await by("taxon_id", (value) => scheme.checklist.taxa.get(value)?.scientificName ?? value),
    region: await by("territory", (value) => territories.find(({ id }) => id === value)?.name ?? value),
    recorder: await by("recorder", (value) => names.get(value) ?? value, MOST_RECORDERS),
  };
}
