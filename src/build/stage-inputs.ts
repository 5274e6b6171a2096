import type { Scheme } from "../scheme/scheme.ts";
import type { SourceSetting } from "../scheme/settings.ts";

/**
 * What reading a file depends on beside its bytes: its source's settings without those that are only shown.
 *
 * @example readInputs({ ...source, title: "Walks" }) === readInputs({ ...source, title: "Museum" }) // => true
 */
export function readInputs(source: SourceSetting): string {
  const {
    title: _,
    licence: __,
    kind: ___,
    project: ____,
    aim: _____,
    target: ______,
    mass_event: _______,
    ...read
  } = source;
  return JSON.stringify(read);
}

/** What interpreting depends on beside the rows read: rules of placing and dating, periods, castes, and the checklist's names. */
export function interpretInputs({ settings, taxa, territories, regions, sites, decisions }: Scheme): string {
  const { placing, dates, periods, edition, excluded, castes, range, surroundings, sources } = settings;
  const names = taxa.map(
    ({
      taxonID,
      scientificName,
      scientificNameAuthorship,
      taxonRank,
      synonyms,
      vernacularNames,
      within,
      castes: own,
    }) => [taxonID, scientificName, scientificNameAuthorship, taxonRank, synonyms, vernacularNames, within, own],
  );
  return JSON.stringify([
    placing,
    dates,
    periods,
    edition.date,
    excluded,
    castes,
    range,
    surroundings.kinds,
    sources.map(readInputs),
    names,
    territories,
    regions.map(({ id, field, name, code }) => [id, field, name, code]),
    sites,
    correctionsOf(decisions),
  ]);
}

/** Only what rulings correct, and which records they join or part, is interpreted otherwise; the rest of them counts in the review. */
function correctionsOf(decisions: Scheme["decisions"]): unknown[] {
  return [...decisions.values()]
    .filter(
      ({ corrections, sameAs, notTheSame }) => Object.keys(corrections).length + sameAs.length + notTheSame.length > 0,
    )
    .map(({ recordKey, corrections, sameAs, notTheSame, latest }) => [
      recordKey,
      corrections,
      sameAs,
      notTheSame,
      latest.saidName,
      latest.saidDate,
      latest.saidPlace,
      latest.saidKind,
    ]);
}

/** What the review depends on beside the interpreted records: settings, the scheme's own tables, and the rulings. */
export function reviewInputs({
  settings,
  taxa,
  characters,
  accounts,
  landSquares,
  sensitive,
  regions,
  decisions,
}: Scheme): string {
  const { checks, sources, licence } = settings;
  return JSON.stringify([
    checks,
    licence,
    sources.map(({ title: _, ...source }) => source),
    taxa.map(({ taxonID, within, castes, establishmentMeans }) => [taxonID, within, castes, establishmentMeans]),
    characters,
    // Of an account only what says how its taxon is known; its text may change.
    [...accounts.values()]
      .map(({ front }) => [front.taxonID, front.evidence, front.look_alikes.flatMap(({ taxonID }) => taxonID ?? [])])
      .filter(([, evidence, others]) => evidence !== "" || others?.length !== 0),
    settings.territories.map(({ id, name }) => [id, name]),
    landSquares,
    sensitive.map(({ taxonID }) => taxonID),
    regions,
    [...decisions.values()],
  ]);
}

/** What the measures depend on beside the interpreted records: compared periods, the rules of the measures, classes of sources, aggregates, land, and which taxa are shown coarser. */
export function measureInputs({ settings, taxa, landSquares, sensitive, regions }: Scheme): string {
  const { periods, provisional_years, compared, coverage, season, change, surroundings, sources } = settings;
  return JSON.stringify([
    periods,
    provisional_years,
    compared,
    coverage,
    season,
    change,
    { ...surroundings, kinds: surroundings.kinds.map(({ id, field }) => [id, field]) },
    sources.map(({ id, kind, aim, target, mass_event }) => [id, kind, aim, target, mass_event]),
    taxa.map(({ taxonID, within }) => [taxonID, within]),
    landSquares,
    sensitive,
    regions,
  ]);
}
