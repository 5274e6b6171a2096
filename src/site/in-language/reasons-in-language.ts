/** The program's own English of the published tables, in the language of the pages. */
import type {
  AccountingFile,
  AtlasFile,
  ChangeRow,
  DownloadsFile,
  FiguresFile,
  KnownTruthFile,
  TaxonFile,
} from "../../publishing/contracts.ts";
import { sayPublished } from "../words/published-text.ts";
import { methodsIn } from "./methods-in-language.ts";
import type { PageLanguage } from "./page-language.ts";

/** A row with its reason in the language of the pages. */
function reasoned<Row extends { reason: string }>(row: Row): Row {
  return row.reason === "" ? row : { ...row, reason: sayPublished(row.reason) };
}

/** Compared squares with the reason why they are not judged, under both rules. */
function changeIn(row: ChangeRow): ChangeRow {
  return { ...reasoned(row), stricter: row.stricter === null ? null : reasoned(row.stricter) };
}

/** What became of the records, and what checks found. */
export function accountingIn(file: AccountingFile): AccountingFile {
  return {
    ...file,
    rows: file.rows.map(reasoned),
    squares_by_reason: file.squares_by_reason.map(reasoned),
    findings: file.findings.map((row) => ({ ...row, title: sayPublished(row.title) })),
  };
}

/** Titles of the files for researchers; their fields are described in the language of the data. */
export function downloadsIn(file: DownloadsFile): DownloadsFile {
  return { ...file, files: file.files.map((each) => ({ ...each, title: sayPublished(each.title) })) };
}

/** How recording changed in each trial, and why a claim is withdrawn. */
export function knownTruthIn(file: KnownTruthFile): KnownTruthFile {
  return {
    made: sayPublished(file.made),
    rows: file.rows.map((row) => ({ ...row, label: sayPublished(row.label) })),
    claims: file.claims.map(reasoned),
  };
}

/** Why figures of a taxon are not given. */
export function figureReasonsIn(figures: FiguresFile): FiguresFile {
  return {
    ...figures,
    trends: figures.trends.map(reasoned),
    surroundings: figures.surroundings.map(reasoned),
    seasons: figures.seasons.map(reasoned),
    shifts: figures.shifts.map(reasoned),
    ranges: figures.ranges.map((row) => ({
      ...row,
      occupancy_reason: sayPublished(row.occupancy_reason),
      extent_reason: sayPublished(row.extent_reason),
    })),
  };
}

/** Why change of a taxon is not judged, and why records of it fill no square. */
export function taxonReasonsIn(taxon: TaxonFile): TaxonFile {
  return {
    ...taxon,
    change: taxon.change.map(changeIn),
    not_on_map: taxon.not_on_map.map(reasoned),
  };
}

/**
 * Names of grids, why change of a taxon is not judged, and what is put into the words of the methods page.
 *
 * @param shown the atlas in the language of the pages
 * @param published the same in the scheme's first language
 */
export function atlasReasonsIn(page: PageLanguage, shown: AtlasFile, published: AtlasFile): AtlasFile {
  const atlas = { ...shown, methods: methodsIn(page, { shown, published }) };
  return {
    ...atlas,
    territories: atlas.territories.map((one) => ({ ...one, grid_name: sayPublished(one.grid_name) })),
    taxa: atlas.taxa.map((one) => ({ ...one, change: one.change === null ? null : changeIn(one.change) })),
  };
}
