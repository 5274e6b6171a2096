/** The list of candidates: body, name, odds, reasons. */
import { bodyId } from "./body-id.ts";
import { copyOf, made } from "./elements.ts";
import { oneIn, tenthsOf } from "./odds.ts";
import type { Candidate } from "./outcome.ts";
import type { PageData } from "./page-data.ts";
import { reasonWords, type Speech } from "./reason-words.ts";
import type { Reason, Stand } from "./reasons.ts";

/** What a row needs beside its candidate. */
export interface RowContext {
  readonly speech: Speech;
  readonly addresses: PageData["addresses"];
  readonly reasons: (candidate: Candidate) => readonly Reason[];
  /** Third of the month of the sighting, where a date is told. */
  readonly third: number | undefined;
  /** The likeliest taxon, to tell the others from. */
  readonly first: Candidate | undefined;
}

const SVG = "http://www.w3.org/2000/svg";
/** Signs of a reason: full, empty, struck through. */
const SIGNS: Readonly<Record<Stand, string>> = {
  agrees: "M0 0h10v10H0z",
  against: "M.7 .7h8.6v8.6H.7z",
  unknown: "M.7 .7h8.6v8.6H.7zM.7 9.3L9.3 .7",
};

/** The row of one candidate. */
export function candidateRow(candidate: Candidate, context: RowContext): HTMLLIElement {
  const { speech, reasons, first, addresses } = context;
  const { taxon, chance } = candidate;
  const row = made("li", {}, ...bodyOf(candidate));
  const text = made("div", {}, headOf(candidate, context), oddsOf(chance, speech));
  text.append(made("ul", {}, ...reasons(candidate).map((reason) => reasonItem(reason, speech))));
  if (first !== undefined && first.taxon !== taxon)
    text.append(
      made(
        "p",
        { class: "tell" },
        made(
          "a",
          { href: tellApart(addresses, [first.taxon.slug, taxon.slug]) },
          speech.say("narrow.compare", { name: first.taxon.short }),
        ),
      ),
    );
  row.append(text, seasonOf(taxon.slug, context.third));
  return row;
}

/** A line of one of the less likely: name, odds and what speaks against it most. */
export function shortRow(candidate: Candidate, context: RowContext): HTMLLIElement {
  const { speech, reasons } = context;
  const against = reasons(candidate).find(({ stand }) => stand === "against");
  const odds = made("span", { class: "far" }, speech.say("narrow.odds-far", { of: oneIn(candidate.chance) }));
  const row = made("li", {}, headOf(candidate, context), odds);
  if (against !== undefined) row.append(made("ul", {}, reasonItem(against, speech)));
  return row;
}

/** Address of the page that lays taxa side by side. */
export function tellApart({ tellApart: page }: PageData["addresses"], slugs: readonly string[]): string {
  return `${page}?taxa=${slugs.join(",")}#choose`;
}

function headOf({ taxon }: Candidate, { addresses }: RowContext): HTMLHeadingElement {
  const href = taxon.outside ? `${addresses.outside}#${taxon.slug}` : `${addresses.species}${taxon.slug}/`;
  const latin = taxon.scientific === taxon.name ? [] : [" ", made("i", { translate: "no" }, taxon.scientific)];
  return made("h3", {}, made("a", { href }, taxon.short), ...latin);
}

function oddsOf(chance: number, { say }: Speech): HTMLParagraphElement {
  const tenths = tenthsOf(chance);
  const squares = drawn("odds-squares", "0 0 118 10", [
    ["full", rowOf(0, tenths)],
    ["open", rowOf(tenths, 10, 0.5)],
  ]);
  return made("p", { class: "odds" }, squares, made("span", {}, say("narrow.odds", { tenths })));
}

function rowOf(from: number, to: number, inset = 0): string {
  const side = 10 - 2 * inset;
  return Array.from(
    { length: to - from },
    (_, i) => `M${12 * (from + i) + inset} ${inset}h${side}v${side}h${-side}z`,
  ).join("");
}

function reasonItem(reason: Reason, speech: Speech): HTMLLIElement {
  const sign = drawn("sign", "0 0 10 10", [[reason.stand, SIGNS[reason.stand]]]);
  const stand = made("span", { class: "unseen" }, `${speech.say(`narrow.stand-${reason.stand}`)}: `);
  return made("li", { class: reason.stand }, sign, stand, reasonWords(reason, speech));
}

function drawn(name: string, viewBox: string, paths: readonly (readonly [string, string])[]): SVGSVGElement {
  const svg = document.createElementNS(SVG, "svg");
  svg.setAttribute("class", name);
  svg.setAttribute("viewBox", viewBox);
  svg.setAttribute("aria-hidden", "true");
  for (const [className, d] of paths) {
    const path = document.createElementNS(SVG, "path");
    path.setAttribute("class", className);
    path.setAttribute("d", d);
    svg.append(path);
  }
  return svg;
}

/** The season of a taxon in one line, with a stroke at the date. */
function seasonOf(slug: string, third: number | undefined): HTMLElement {
  const season = made("div", { class: "in-year" }, ...copyOf(`season-${slug}`));
  const now = document.createElementNS(SVG, "path");
  now.setAttribute("class", "now");
  now.setAttribute("d", `M${(third ?? 0) + 0.5} 0v14`);
  if (third !== undefined) season.querySelector("svg")?.append(now);
  return season;
}

/** The body in the caste and form the chance mostly comes from, or the nearest that is drawn. */
function bodyOf({ taxon: { slug }, caste, form }: Candidate): Node[] {
  const drawings = [
    [caste, form],
    [caste, ""],
    ["", form],
    ["", ""],
  ].map(([ofCaste = "", ofForm = ""]) => copyOf(bodyId(slug, ofCaste, ofForm)));
  return [made("div", { class: "portrait" }, ...(drawings.find((nodes) => nodes.length > 0) ?? []))];
}
