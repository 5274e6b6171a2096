import type { Say } from "../../words/client.ts";
import { escapeHtml } from "../../words/escape-html.ts";
import { partName } from "../identify/body-words.ts";
import type { IdentifyTaxon } from "../identify/identify-taxa.ts";
import type { Comparison, Row } from "./comparison.ts";
import { withBold } from "./html.ts";
import { stateHtml } from "./scheme-text.ts";
import type { Verdict } from "./verdict.ts";

/** What the sentences need beside the comparison: words, how a list is written, and the link of a taxon. */
export interface Wording {
  readonly says: Say;
  /** BCP 47 tag of the page. */
  readonly tag: string;
  /** BCP 47 tag of the scheme's own texts. */
  readonly schemeTag: string;
  /** Address of a taxon's page, or of its place on the page of what is outside the group. */
  readonly link: (taxon: IdentifyTaxon) => string;
  /** Shown names of castes. */
  readonly labels: ReadonlyMap<string, string>;
  /** What one of the animals of the atlas is called. */
  readonly group: string;
}

/** Characters a sentence names; more are counted. */
const NAMED = 3;

/**
 * The sentence at the head of a comparison, as HTML: of two taxa what settles it, of more what to look at first, and of
 * any that nothing here settles, which aggregate to record.
 *
 * @example headSentence(comparison, wording) // "One character settles it: <b>hind leg</b> (black against orange)."
 */
export function headSentence(comparison: Comparison, wording: Wording): string {
  const [only] = comparison.verdicts;
  if (only === undefined) return "";
  const said =
    comparison.verdicts.length === 1 ? pairSentence(only, comparison, wording) : orderSentences(comparison, wording);
  return withBold(said);
}

/** What parts one pair, in a sentence. */
export function pairSentence(verdict: Verdict, { rows, columns }: Comparison, wording: Wording): string {
  const { says, link } = wording;
  const { settling, supporting, misleading, aggregate, nested } = verdict;
  const at = [verdict.one, verdict.other].map((taxon) => columns.findIndex((column) => column.taxon === taxon));
  const named = (parts: readonly string[]) =>
    listed(
      parts.slice(0, NAMED).flatMap((part) => {
        const row = rows.find((each) => each.part === part);
        return row === undefined ? [] : [characterSaid(row, at, wording)];
      }),
      wording,
    );
  const group = aggregate === undefined ? "" : linked(aggregate, link);
  if (nested) {
    const part = verdict.one === aggregate ? verdict.other : verdict.one;
    return says("apart.nested", { part: escapeHtml(part.name), group });
  }
  if (settling.length > 0)
    return says(settling.length > NAMED ? "apart.settles-first" : "apart.settles", {
      n: settling.length,
      list: named(settling),
    });
  if (aggregate !== undefined)
    return says(supporting.length === 0 ? "apart.nothing-record" : "apart.hints-record", {
      group,
      list: named(supporting),
    });
  const left = supporting.length > 0 ? supporting : misleading;
  return left.length === 0 ? says("apart.nothing") : says("apart.hints", { n: left.length, list: named(left) });
}

function characterSaid({ part, cells }: Row, at: readonly number[], wording: Wording): string {
  const { says } = wording;
  const [one = "", other = ""] = at.map((index) => cells[index]?.told?.state.words ?? "");
  return says("apart.character", {
    part: escapeHtml(partName(part, says)),
    one: stateHtml(one, wording),
    other: stateHtml(other, wording),
  });
}

/** What to look at first, then next: each time the part that settles most of the pairs that are left. */
export function lookingOrder(verdicts: readonly Verdict[], rows: readonly Row[]): string[] {
  const order: string[] = [];
  let left = verdicts.filter(({ nested }) => !nested);
  while (order.length < NAMED) {
    const counts = rows.map(({ part }) => ({ part, n: left.filter(({ settling }) => settling.includes(part)).length }));
    const best = counts.reduce((most, each) => (each.n > most.n ? each : most), { part: "", n: 0 });
    if (best.n === 0) break;
    order.push(best.part);
    left = left.filter(({ settling }) => !settling.includes(best.part));
  }
  return order;
}

function orderSentences({ verdicts, rows }: Comparison, wording: Wording): string {
  const { says, link } = wording;
  const [first, second, third] = lookingOrder(verdicts, rows).map((part) =>
    says(/^[A-Z]\d+$/.test(part) ? "apart.code" : "apart.the", { part: escapeHtml(partName(part, says)) }),
  );
  const look =
    first === undefined
      ? says("apart.nothing")
      : says("apart.look", {
          n: third === undefined ? (second === undefined ? 1 : 2) : 3,
          first,
          second: second ?? "",
          third: third ?? "",
        });
  const unsettled = verdicts.filter(({ settling, nested }) => settling.length === 0 && !nested);
  const record = unsettled.map(({ one, other, aggregate }) => {
    const pair = { one: escapeHtml(one.short), other: escapeHtml(other.short) };
    return aggregate === undefined
      ? says("apart.pair-open", pair)
      : says("apart.pair-record", { ...pair, group: linked(aggregate, link) });
  });
  return [look, ...record].join(" ");
}

/** A taxon's name as a link. */
export function linked(taxon: IdentifyTaxon, link: Wording["link"]): string {
  return `<a href="${link(taxon)}">${escapeHtml(taxon.name)}</a>`;
}

/** A list as the page's language writes it. @example listed(["T4", "wings"], wording) // "T4 and wings" */
export function listed(words: readonly string[], { tag }: Pick<Wording, "tag">): string {
  return new Intl.ListFormat(tag, { type: "conjunction" }).format(words);
}
