import type { TaxonSummary } from "../../../publishing/contracts.ts";
import { escapeHtml } from "../../words/escape-html.ts";
import { language, say } from "../../words/say.ts";
import { seasonOf } from "../tell-apart/season-html.ts";
import { seasonWords } from "../text/sentences.ts";

const drawn = new Map<string, string>();

/**
 * The season of a taxon as a field card shows it. Thousands of cards show the same strips, so each is drawn once.
 *
 * @returns markup, empty under 30 records
 * @example stripOf(redTailed).startsWith('<svg class="strip"') // true
 */
export function stripOf({ slug, short_name, season }: Pick<TaxonSummary, "slug" | "short_name" | "season">): string {
  const key = `${language()} ${slug} ${season.join(" ")}`;
  const known = drawn.get(key);
  if (known !== undefined) return known;
  const label = say("charts.season-of", { name: short_name, season: seasonWords(season) });
  const svg =
    seasonOf(season, language())?.svg.replace(
      'aria-hidden="true"',
      () => `role="img" aria-label="${escapeHtml(label)}"`,
    ) ?? "";
  drawn.set(key, svg);
  return svg;
}
