import type { DeskAnswer, RecordAnswer } from "../../../review/desk/answers.ts";
import { aroundSection } from "./around-tables.ts";
import type { KeptAnswers } from "./kept-answers.ts";
import { mapFigure } from "./map-figure.ts";
import type { RecordActs } from "./record-page.ts";
import { seasonFigure } from "./season-figure.ts";

/** Who stays this long on a record, in milliseconds, wants to see the others too: finding them takes longest. */
const STAYS = 350;

/** Puts map, season and other records into the page, each as it comes, while the record is still the one that is wanted. */
export async function putFigures(
  record: RecordAnswer,
  desk: DeskAnswer,
  answers: KeptAnswers,
  acts: RecordActs,
  isWanted: () => boolean,
): Promise<void> {
  const put = async (id: string, nodes: Promise<HTMLElement[]>) => {
    const ready = await nodes;
    if (!isWanted()) return;
    const place = document.getElementById(id);
    place?.replaceChildren(...ready);
    place?.removeAttribute("aria-busy");
  };
  const map = answers.map(record.record).then(async (answer) => [await mapFigure(answer, record, desk)]);
  const season = answers.season(record.taxon?.id).then((answer) => [seasonFigure(answer, record, desk)]);
  await Promise.all([put("map", map), put("season", season)]);
  await new Promise((later) => setTimeout(later, STAYS));
  if (isWanted())
    await put(
      "around",
      answers.around(record.record).then((answer) => aroundSection(answer, record, acts)),
    );
}
