import { atlas, publishedFolder, taxon } from "../../published.ts";
import { withoutMarks } from "../../words/fallback.ts";
import { language } from "../../words/say.ts";
import { markedAs } from "../find/marked-as.ts";
import type { SeasonFile } from "./in-season.ts";
import type { MonthTaxon } from "./month-lists.ts";

let kept: { key: string; taxa: MonthTaxon[] } | undefined;

/** Taxa that are no group, with the season of each caste. Read once a build. @example monthTaxa().length // 25 */
export function monthTaxa(): readonly MonthTaxon[] {
  const key = `${language()} ${publishedFolder()}`;
  if (kept?.key !== key)
    kept = {
      key,
      taxa: atlas()
        .taxa.filter(({ is_aggregate }) => !is_aggregate)
        .map(({ slug, season }) => ({ slug, season, castes: taxon(slug).season_by_caste })),
    };
  return kept.taxa;
}

/** What the script of the season lists asks for. @example seasonFile().since // 2006 */
export function seasonFile(): SeasonFile {
  const { taxa, effort_season, periods, invented } = atlas();
  return {
    ...(invented ? { invented: true as const } : {}),
    visits: effort_season,
    since: periods.at(-1)?.from ?? null,
    taxa: taxa
      .filter(({ is_aggregate }) => !is_aggregate)
      .map(({ slug, short_name, season }) => {
        const tag = markedAs(short_name);
        return { slug, name: withoutMarks(short_name), ...(tag === undefined ? {} : { language: tag }), season };
      }),
  };
}
