import { generalisationsOf, hiddenAt } from "../scheme/generalisations.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { changeRows, type JudgingRules } from "./change-rows.ts";
import type { ChangeRow, TaxonFile, TaxonSummary } from "./contracts.ts";
import { generalisedTo, shownCoarser } from "./generalisations.ts";
import { renderMarkdown } from "./markdown.ts";
import type { Measured } from "./measured.ts";
import { charactersOf, outsideNames } from "./outside-taxa.ts";
import { sectionId } from "./section-id.ts";
import { sizesOf } from "./sizes.ts";
import { statusesOf } from "./statuses.ts";
import type { TaxonNames } from "./taxon-names.ts";

/** What the file of a taxon is made from. */
export interface TaxonSources {
  scheme: Scheme;
  names: ReadonlyMap<string, TaxonNames>;
  measured: ReadonlyMap<string, Measured>;
  judging: JudgingRules;
}

/** Headline of one taxon, for lists. */
export function taxonSummary(taxonId: string, { scheme, names, measured, judging }: TaxonSources): TaxonSummary {
  const { taxon, slug, vernacularName, shortName } = must(names.get(taxonId));
  const found = must(measured.get(taxonId));
  const change = changeOf(taxonId, { scheme, measured, judging });
  return {
    taxon_id: taxonId,
    slug,
    scientific_name: taxon.scientificName,
    vernacular_name: vernacularName,
    short_name: shortName,
    vernacular_names: taxon.vernacularNames,
    is_aggregate: scheme.checklist.isAggregate(taxonId),
    lead: scheme.accounts.get(taxonId)?.front.lead ?? "",
    generalised_to: generalisedTo(taxonId, scheme),
    records: found.totals.records,
    hectads: found.totals.hectads,
    hectads_latest: found.totals.hectads_latest,
    tetrads_latest: found.totals.tetrads_latest,
    first_year: found.totals.first_year,
    last_year: found.totals.last_year,
    change: change.find(({ resolution_m, territory }) => resolution_m === 10_000 && territory === "all") ?? null,
    season: found.seasonAll,
    hectad_codes_latest: found.latestHectads,
    first_seen: taxon.firstSeen === "" ? null : taxon.firstSeen,
  };
}

/** The whole file of one taxon, but for its pictures, downloads and uncovered squares, which the caller knows. */
export function taxonFile(
  taxonId: string,
  sources: TaxonSources,
): Omit<TaxonFile, "downloads" | "uncovered" | "media"> {
  const { scheme, names, measured } = sources;
  const { hectad_codes_latest: _, ...summary } = taxonSummary(taxonId, sources);
  const { taxon } = must(names.get(taxonId));
  const found = must(measured.get(taxonId));
  const account = scheme.accounts.get(taxonId);
  const slugs = (ids: readonly string[]) => ids.flatMap((id) => names.get(id)?.slug ?? []);
  return {
    ...summary,
    authorship: taxon.scientificNameAuthorship,
    rank: taxon.taxonRank,
    subgenus: taxon.subgenus,
    other_names: taxon.vernacularNames.filter(({ name }) => name !== summary.vernacular_name),
    synonyms: taxon.synonyms,
    members: slugs(scheme.taxa.filter(({ within }) => within.includes(taxonId)).map(({ taxonID }) => taxonID)),
    within: slugs(taxon.within),
    castes: taxon.castes,
    sizes: sizesOf(scheme, taxonId),
    statuses: statusesOf(taxonId, scheme),
    evidence_needed: account?.front.evidence ?? "",
    account: (account?.sections ?? []).map(({ title, body }) => ({
      id: sectionId(title),
      title,
      html: renderMarkdown(body),
    })),
    look_alikes: lookAlikes(taxonId, sources),
    characters: charactersOf(scheme, taxonId),
    squares: found.squares,
    change: changeOf(taxonId, sources),
    season_by_caste: seasonRows(scheme, found),
    years: found.years,
    shown_coarser: shownCoarser(taxonId, scheme, names),
    not_on_map: found.offMap,
  };
}

/** The look-alikes of the account, each with what parts the two. */
function lookAlikes(taxonId: string, { scheme, names }: TaxonSources): TaxonFile["look_alikes"] {
  const outsiders = outsideNames(scheme, names);
  return (scheme.accounts.get(taxonId)?.front.look_alikes ?? []).map(({ taxonID, outside = "", difference }) => {
    const other = taxonID === undefined ? undefined : names.get(taxonID);
    const outsider = outsiders.get(outside);
    return {
      slug: other?.slug ?? null,
      outside: outsider?.slug ?? null,
      name: other?.vernacularName ?? outsider?.vernacularName ?? outside,
      difference,
    };
  });
}

/** Rows of change of a taxon, the pair of the maps first; none in an atlas of one period. */
function changeOf(
  taxonId: string,
  { scheme, measured, judging }: Pick<TaxonSources, "scheme" | "measured" | "judging">,
): ChangeRow[] {
  const listed = generalisationsOf(scheme, taxonId);
  return changeRows(must(measured.get(taxonId)).changes, judging, (row) => hiddenAt(row, listed));
}

/** One row a caste of the settings that has records, in their order, and "not stated" last. */
function seasonRows(scheme: Scheme, { season, leftOut }: Measured): TaxonFile["season_by_caste"] {
  const castes = [
    ...scheme.settings.castes.map(({ id, label, many }) => ({ id, label, many })),
    { id: "not_stated", many: undefined, label: scheme.settings.castes.length === 0 ? "All records" : "Not stated" },
  ];
  return castes.flatMap(({ id, label, many }) => {
    const records = Array<number>(36).fill(0);
    const visits = Array<number>(36).fill(0);
    for (const row of season) {
      if (row.caste !== id) continue;
      records[row.third] = row.records;
      visits[row.third] = row.visits;
    }
    const total = records.reduce((sum, number) => sum + number, 0);
    const left_out = leftOut.find(({ caste }) => caste === id)?.records ?? 0;
    return total + left_out === 0
      ? []
      : [{ caste: id, label, ...(many === undefined ? {} : { many }), records, visits, total, left_out }];
  });
}

function must<T>(value: T | undefined): T {
  if (value === undefined) throw new Error("a taxon of the checklist has no measures");
  return value;
}
