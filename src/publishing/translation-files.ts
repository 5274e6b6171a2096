import type { Account, SchemePage } from "../scheme/account.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { Translation } from "../scheme/translations.ts";
import type { AccountInLanguage, TranslationFile } from "./contracts.ts";
import { renderMarkdown } from "./markdown.ts";
import { sectionId } from "./section-id.ts";
import type { TaxonNames } from "./taxon-names.ts";

/** The file of each further language, in the order of the settings. */
export function translationFiles(scheme: Scheme, names: ReadonlyMap<string, TaxonNames>): TranslationFile[] {
  return scheme.translations.map(({ language, words, accounts, pages }) => {
    const { group, ...rest } = words;
    return {
      language,
      ...rest,
      group: group ?? null,
      accounts: Object.fromEntries(
        accounts.map((account) => [
          names.get(account.front.taxonID)?.slug ?? "",
          accountInLanguage(account, scheme.accounts.get(account.front.taxonID)),
        ]),
      ),
      pages: Object.fromEntries(
        pages.map((page) => [page.slug, { title: page.front.title, lead: page.front.lead, html: pageHtml(page) }]),
      ),
    };
  });
}

/** A page of the scheme as HTML, headings and all. */
export function pageHtml({ sections }: Pick<SchemePage, "sections">): string {
  return sections.map(({ title, body }) => renderMarkdown(title === "" ? body : `## ${title}\n\n${body}`)).join("\n");
}

function accountInLanguage(
  { front, sections }: Translation["accounts"][number],
  first: Account | undefined,
): AccountInLanguage {
  const differences = (first?.front.look_alikes ?? []).map(
    ({ taxonID, outside }) =>
      front.look_alikes.find((look) =>
        "taxonID" in look ? look.taxonID === taxonID : outside !== undefined && look.outside === outside,
      )?.difference ?? "",
  );
  return {
    lead: front.lead,
    evidence: front.evidence,
    size_notes: (first?.front.sizes ?? []).map(
      ({ caste }) => front.sizes.find((size) => size.caste === caste)?.note ?? "",
    ),
    differences,
    sections: sections.map(({ title, body }, place) => ({
      id: sectionId(first?.sections[place]?.title ?? title),
      title,
      html: renderMarkdown(body),
    })),
  };
}
