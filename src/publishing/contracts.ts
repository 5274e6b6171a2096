/**
 * The contract of everything the site reads. Publishing writes these files into one folder, the site reads
 * that folder and nothing else. Both sides parse with these schemas.
 *
 *   atlas.json            AtlasFile       title, periods, settings in force, list of taxa
 *   taxa/<slug>.json      TaxonFile       one taxon: account, characters, squares, change, season, years
 *   figures/<slug>.json  FiguresFile     one taxon: every statistic with its n, interval and reason to be silent
 *   squares.json          SquaresFile     every hectad that is on land or has been visited
 *   coverage.json         CoverageFile    squares covered under two rules, and how complete their lists are
 *   squares/<slug>.json   SquareFile      one hectad: its taxa, visits, tetrads, what is expected
 *   wanted.json           WantedFile      squares by what further visits could add
 *   regions.json          RegionsFile     the scheme's regions by layer, where it has some
 *   regions/<slug>.json   RegionFile      one region: its taxa
 *   known-truth.json      KnownTruthFile  what the methods of change say where the truth is known, and so may claim
 *   identify-truth.json   IdentifyTruthFile  how the identification helper does where the truth is known
 *   accounting.json       AccountingFile  what became of each record, by source and reason
 *   downloads.json        DownloadsFile   the files for researchers, with fields, rows, bytes, SHA-256
 *   media.json            MediaFile       every picture and clip, with licence and credit
 *   media/…                               the pictures and clips themselves
 *   pages/<slug>.json     PageFile        the scheme's own pages
 *   identify/places/…     NeighbourhoodBlock  what is recorded around each hectad, for scripts of the pages; with an index
 *   languages/<tag>.json  TranslationFile what the scheme says in a further language, laid over the others by its pages
 *   basemap/<name>.geojson                land, lakes, borders, land-detail (WGS84), where the scheme has them
 *   data/<edition>/…                      the downloads themselves
 */
export * from "./contracts/accounting.ts";
export * from "./contracts/atlas.ts";
export * from "./contracts/coverage.ts";
export * from "./contracts/expected.ts";
export * from "./contracts/figures.ts";
export * from "./contracts/identify-truth.ts";
export * from "./contracts/known-truth.ts";
export * from "./contracts/media.ts";
export * from "./contracts/neighbourhoods.ts";
export * from "./contracts/number-kinds.ts";
export * from "./contracts/outside.ts";
export * from "./contracts/ranges.ts";
export * from "./contracts/regions.ts";
export * from "./contracts/seasons.ts";
export * from "./contracts/squares.ts";
export * from "./contracts/surroundings.ts";
export * from "./contracts/taxon.ts";
export * from "./contracts/translation.ts";
export * from "./contracts/trends.ts";
