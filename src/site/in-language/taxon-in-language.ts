import type { AtlasFile, FiguresFile, PageFile, TaxonFile } from "../../publishing/contracts.ts";
import { say } from "../words/say.ts";
import { casteLabel } from "./atlas-in-language.ts";
import { namesIn, type PageLanguage, wordsIn } from "./page-language.ts";
import { scopeIn } from "./scope-in-language.ts";

/**
 * A taxon in the language of the pages: names, account, labels of castes.
 *
 * @param taxon as published, in the scheme's first language
 * @param atlas in the language of the pages, and as published: for the names of others
 */
export function taxonIn(
  page: PageLanguage,
  taxon: TaxonFile,
  { shown, published }: { shown: AtlasFile; published: AtlasFile },
): TaxonFile {
  const season_by_caste = taxon.season_by_caste.map((row) => seasonIn(page, row, published.castes.length > 0));
  if (page.first === page.tag) return { ...taxon, season_by_caste };
  const own = page.words?.accounts[taxon.slug];
  const nameOf = ({ slug, outside, name }: TaxonFile["look_alikes"][number]) =>
    shown.taxa.find((other) => other.slug === slug)?.vernacular_name ??
    shown.outside.find((other) => other.slug === outside)?.vernacular_name ??
    wordsIn(page, "", name);
  const member = (name: string) => published.taxa.findIndex((other) => other.vernacular_name === name);
  return {
    ...taxon,
    ...namesIn(page, taxon),
    season_by_caste,
    lead: wordsIn(page, own?.lead, taxon.lead),
    evidence_needed: wordsIn(page, own?.evidence, taxon.evidence_needed),
    sizes: taxon.sizes.map((size, place) => ({
      ...size,
      label: casteLabel(page, size.caste, size.label),
      note: wordsIn(page, own?.size_notes[place], size.note),
    })),
    account: accountIn(page, taxon),
    look_alikes: taxon.look_alikes.map((look, place) => ({
      ...look,
      name: nameOf(look),
      difference: wordsIn(page, own?.differences[place], look.difference),
    })),
    shown_coarser: taxon.shown_coarser.map((entry) => ({
      ...entry,
      of: shown.taxa[member(entry.of)]?.vernacular_name ?? entry.of,
      scope: scopeIn(page, entry.scope, { shown, published }),
      reason: wordsIn(page, "", entry.reason),
    })),
    media: taxon.media.map((each) => ({ ...each, caption: wordsIn(page, "", each.caption) })),
  };
}

/** The account of the page's language; else the first language's, which says first what language it is in. */
function accountIn(page: PageLanguage, { slug, account }: TaxonFile): TaxonFile["account"] {
  const own = page.words?.accounts[slug]?.sections ?? [];
  if (own.length > 0) return own;
  return account.map(({ id, title, html }, place) => ({
    id,
    title: wordsIn(page, "", title),
    html: inOtherLanguage(page, html, place === 0 ? "layout.account-language" : undefined),
  }));
}

/** One of the scheme's own pages, in the language of the pages or in its first. */
export function pageIn(page: PageLanguage, file: PageFile): PageFile {
  if (page.first === page.tag) return file;
  const own = page.words?.pages[file.slug];
  if (own !== undefined) return { ...file, ...own };
  return {
    ...file,
    title: wordsIn(page, "", file.title),
    lead: wordsIn(page, "", file.lead),
    html: inOtherLanguage(page, file.html, "layout.page-language"),
  };
}

/** Block text of the first language, with a line of the page's language that says so. */
function inOtherLanguage(
  { first, tag }: PageLanguage,
  html: string,
  line: "layout.account-language" | "layout.page-language" | undefined,
): string {
  const name = new Intl.DisplayNames([tag], { type: "language", languageDisplay: "standard" }).of(
    first.split("-")[0] ?? first,
  );
  const said = line === undefined ? "" : `<p class="note">${say(line, { language: name ?? first })}</p>`;
  return `${said}<div lang="${first}">${html}</div>`;
}

function seasonIn(
  page: PageLanguage,
  row: TaxonFile["season_by_caste"][number],
  hasCastes: boolean,
): TaxonFile["season_by_caste"][number] {
  if (row.caste === "not_stated") return { ...row, label: say(hasCastes ? "text.not-stated" : "text.all-records") };
  const many = page.words?.castes[row.caste]?.many;
  return { ...row, label: casteLabel(page, row.caste, row.label), ...(many === undefined ? {} : { many }) };
}

/** The figures of a taxon with the labels of castes, surroundings and regions in the language of the pages. */
export function figuresIn(page: PageLanguage, figures: FiguresFile): FiguresFile {
  if (page.first === page.tag) return figures;
  const { words } = page;
  const caste = <Row extends { caste: string; caste_label: string }>(row: Row): Row =>
    row.caste_label === ""
      ? row
      : { ...row, caste_label: wholeLabel(row) ?? casteLabel(page, row.caste, row.caste_label) };
  return {
    ...figures,
    seasons: figures.seasons.map(caste),
    shifts: figures.shifts.map(caste),
    surroundings: figures.surroundings.map((row) => ({
      ...caste(row),
      kind_label: wordsIn(page, words?.surroundings[row.kind]?.label, row.kind_label),
      term_label: wordsIn(page, words?.surroundings[row.kind]?.terms[row.term], row.term_label),
    })),
    regions: figures.regions.map((row) => ({ ...row, name: words?.regions[row.slug] ?? row.name })),
  };
}

/** What is no caste is named by the program. */
function wholeLabel({ caste, caste_label }: { caste: string; caste_label: string }): string | undefined {
  if (caste === "not_stated") return say("text.not-stated");
  if (caste === "all") return say(caste_label === "All records" ? "text.all-records" : "text.all-castes");
  return undefined;
}
