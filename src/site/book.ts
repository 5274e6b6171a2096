import type { BookFile } from "../publishing/contracts/book.ts";
import type { AtlasFile, TaxonSummary } from "../publishing/contracts.ts";
import { address } from "./address.ts";
import { firstSeenGroups } from "./components/lists/first-seen.ts";
import { longDate } from "./components/text/thirds.ts";
import { atlas } from "./published.ts";
import { escapeHtml } from "./words/escape-html.ts";
import { language, say } from "./words/say.ts";

/**
 * The book of the atlas in the language of the build: the scheme's own pages, the accounts in the order of what one
 * sees first, the methods, and an index of all names.
 *
 * @example bookFile().parts.map(({ title }) => title) // ["About this atlas", "Accounts", "How the figures were made"]
 */
export function bookFile(): BookFile {
  const all = atlas();
  const own = (path: string, title: string, note = "") => ({ path: address(path), title, note });
  return {
    language: language(),
    title: all.title,
    heading: all.heading,
    summary: all.summary,
    edition: say("book.edition", { edition: all.edition.id, date: longDate(all.edition.date) }),
    day: all.edition.date,
    notice: all.invented ? `${say("layout.invented")} ${all.invented_notice}` : "",
    imprint: imprint(all),
    words: { contents: say("book.contents"), index: say("book.index") },
    parts: [
      {
        title: say("book.about"),
        chapters: all.pages.filter(({ in_footer }) => in_footer).map(({ slug, title }) => own(`${slug}/`, title)),
      },
      {
        title: say("book.accounts"),
        chapters: inOrderSeen(all).map((taxon) =>
          own(
            `species/${taxon.slug}/`,
            taxon.vernacular_name,
            taxon.scientific_name === taxon.vernacular_name ? "" : taxon.scientific_name,
          ),
        ),
      },
      { title: say("book.methods"), chapters: [own("methods/", say("layout.methods"))] },
    ],
    names: namesIn(all),
  };
}

function imprint({ citation, licence, basemap }: AtlasFile): BookFile["imprint"] {
  const link = licence.url === "" ? licence.title : `<a href="${licence.url}">${licence.title}</a>`;
  return [
    { title: say("book.cite"), html: escapeHtml(citation) },
    { title: say("book.licence"), html: link },
    ...(basemap === null ? [] : [{ title: say("book.coast"), html: basemap.credit_html }]),
  ];
}

/** Look-alikes stand together: by the groups of the home page, those of no group last. */
function inOrderSeen(all: AtlasFile): TaxonSummary[] {
  const grouped = firstSeenGroups(all).flatMap(({ taxa }) => taxa);
  const slugs = new Set(grouped.map(({ slug }) => slug));
  return [
    ...all.taxa.filter(({ slug }) => slugs.has(slug)),
    ...all.taxa.filter(({ slug }) => !slugs.has(slug)),
  ].toSorted((one, other) => place(grouped, one) - place(grouped, other));
}

function place(grouped: readonly { slug: string }[], { slug }: TaxonSummary): number {
  const found = grouped.findIndex((taxon) => taxon.slug === slug);
  return found === -1 ? grouped.length : found;
}

function namesIn({ taxa }: AtlasFile): BookFile["names"] {
  const names = taxa.flatMap(({ slug, vernacular_name, scientific_name }) => {
    const path = address(`species/${slug}/`);
    const scientific = { name: scientific_name, scientific: true, path };
    return vernacular_name === scientific_name
      ? [scientific]
      : [{ name: vernacular_name, scientific: false, path }, scientific];
  });
  const order = new Intl.Collator(language());
  return names.sort((one, other) => order.compare(one.name, other.name));
}
