/** Where one can stop: a group, the first candidate with what its record needs, or none of the group. */
import { made, marked } from "./elements.ts";
import { tenthsOf } from "./odds.ts";
import { type Outcome, SETTLED } from "./outcome.ts";
import type { PageData } from "./page-data.ts";
import type { Speech } from "./reason-words.ts";

/** From this chance that it is none of the group, the page says so: the share it starts from. */
const TOLD = 0.1;

/** Fills the block; it is hidden where there is nothing to say. */
export function showStop(
  block: HTMLElement,
  { candidates, group, notOfGroup }: Outcome,
  { speech: { say }, page }: { speech: Speech; page: Pick<PageData, "addresses" | "group"> },
): void {
  const [first] = candidates;
  const odds = (chance: number) => say("narrow.odds", { tenths: tenthsOf(chance) });
  const paragraphs: HTMLElement[] = [];
  if (group !== undefined) {
    const text = say("narrow.stop-group", { group: group.taxon.name, odds: odds(group.chance) });
    const href = `${page.addresses.species}${group.taxon.slug}/`;
    const link = made("a", { href }, say("narrow.stop-group-page", { group: group.taxon.short }));
    paragraphs.push(made("p", {}, ...marked(text), " ", link));
  } else if (first !== undefined && first.chance >= SETTLED && !first.taxon.outside && first.taxon.evidence !== "") {
    const text = say("narrow.stop-first", {
      name: first.taxon.short,
      odds: odds(first.chance),
      evidence: first.taxon.evidence,
    });
    paragraphs.push(made("p", {}, ...marked(text)));
  }
  if (notOfGroup >= TOLD) {
    const key = first?.taxon.outside === true ? "narrow.not-group-first" : "narrow.not-group";
    const link = made("a", { href: page.addresses.outside }, say("narrow.not-group-look"));
    paragraphs.push(made("p", {}, ...marked(say(key, { group: page.group, odds: odds(notOfGroup) })), " ", link));
  }
  block.replaceChildren(...paragraphs);
  block.hidden = paragraphs.length === 0;
}
