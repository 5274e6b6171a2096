import type { AtlasFile, Period } from "../../publishing/contracts.ts";
import { say } from "../words/say.ts";
import { namesIn, type PageLanguage, wordsIn } from "./page-language.ts";

/**
 * The atlas in the language of the pages: names, titles and labels of the scheme, and the program's own words in it.
 *
 * @param atlas as published, in the scheme's first language
 * @example atlasIn(page, atlas).castes[0]?.label // "Reine"
 */
export function atlasIn(page: PageLanguage, atlas: AtlasFile): AtlasFile {
  const { words } = page;
  const named = { ...atlas, periods: atlas.periods.map(periodIn) };
  if (atlas.invented) named.invented_notice = words?.invented_notice || say("layout.invented-notice");
  if (page.first === page.tag) return named;
  return {
    ...named,
    title: words?.title || atlas.title,
    heading: wordsIn(page, words?.heading, atlas.heading),
    summary: wordsIn(page, words?.summary, atlas.summary),
    citation: wordsIn(page, words?.citation, atlas.citation),
    sending: { ...atlas.sending, text: wordsIn(page, words?.sending, atlas.sending.text) },
    group: words?.group ?? {
      one: wordsIn(page, "", atlas.group.one),
      many: wordsIn(page, "", atlas.group.many),
    },
    castes: atlas.castes.map((caste) => ({ ...caste, label: casteLabel(page, caste.id, caste.label) })),
    territories: atlas.territories.map((territory) => ({
      ...territory,
      name: words?.territories[territory.id] ?? territory.name,
    })),
    first_seen_groups: atlas.first_seen_groups.map(({ id, title, look_at }) => ({
      id,
      title: wordsIn(page, words?.first_seen[id]?.title, title),
      look_at: wordsIn(page, words?.first_seen[id]?.look_at, look_at),
    })),
    taxa: atlas.taxa.map((taxon) => {
      const { other_names: _, ...names } = namesIn(page, taxon);
      return { ...taxon, ...names, lead: wordsIn(page, words?.accounts[taxon.slug]?.lead, taxon.lead) };
    }),
    outside: atlas.outside.map((taxon) => outsideIn(page, taxon)),
    pages: atlas.pages.map((own) => ({
      ...own,
      title: wordsIn(page, words?.pages[own.slug]?.title, own.title),
    })),
  };
}

/** The name of a caste. @example casteLabel(page, "queen", "Queen") // "Reine" */
export function casteLabel(page: PageLanguage, id: string, label: string): string {
  return wordsIn(page, page.words?.castes[id]?.label, label);
}

function outsideIn(page: PageLanguage, taxon: AtlasFile["outside"][number]): AtlasFile["outside"][number] {
  const { other_names: _, ...names } = namesIn(page, taxon);
  const own = page.words?.outside[taxon.taxon_id];
  return {
    ...taxon,
    ...names,
    kind: wordsIn(page, own?.kind, taxon.kind),
    lead: wordsIn(page, own?.lead, taxon.lead),
  };
}

/** The label of a period is years alone, but where it is open at the left. */
function periodIn(period: Period): Period {
  return period.from === null ? { ...period, label: say("text.to-year", { year: String(period.to) }) } : period;
}
