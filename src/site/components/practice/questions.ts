import { bodyPlan } from "../identify/body-plan.ts";
import type { IdentifyTaxon } from "../identify/identify-taxa.ts";
import { relation, type Told, told, valuesOf } from "../tell-apart/described.ts";
import { sharedAggregate, upwards } from "../tell-apart/verdict.ts";
import { type Caste, viewsOf } from "../tell-apart/views.ts";

/** One animal that is shown: a taxon in a caste, and what may be said of it from what is shown. */
export interface Question {
  /** Slug and caste. */
  readonly id: string;
  readonly taxon: IdentifyTaxon;
  readonly caste: string;
  /** Castes that look the same. */
  readonly castes: readonly string[];
  /** The right answer: the taxon, or the aggregate where what is shown settles no more. */
  readonly answer: IdentifyTaxon;
  /** In the order of the atlas, so that the place of an answer says nothing. */
  readonly choices: readonly IdentifyTaxon[];
}

/** Answers to choose from. */
const MOST_CHOICES = 6;
/** Share of the drawn parts that must have one colour: a body that varies all over cannot be drawn as one animal. */
const LEAST_PLAIN = 0.7;

/**
 * Every question the table of characters can ask. Castes that look alike are one question; aggregates are answers, not
 * animals to show, unless none of their members has a place in the atlas.
 *
 * @param all every taxon, those outside the group last
 * @param castes of the settings
 * @example questionsOf(all, castes).find(({ id }) => id === "buff-tailed:worker")?.answer.slug // "terrestris-group"
 */
export function questionsOf(all: readonly IdentifyTaxon[], castes: readonly Caste[]): Question[] {
  return all
    .filter((taxon) => taxon.members.length === 0 && bodyPlan(taxon.plan) !== undefined)
    .flatMap((taxon) =>
      viewsOf([taxon], castes).flatMap(({ castes: [alike = []] }) => ofCastes(taxon, alike, all, castes)),
    )
    .filter(({ taxon, caste, choices }) => choices.length > 1 && canBeDrawn(taxon, caste))
    .filter(({ taxon, caste }) => !all.some((other) => takesSpecimen(taxon, caste, other, all, castes)));
}

/** One question of castes that look alike, or one for each answer: a queen may be told by what tells no worker. */
function ofCastes(
  taxon: IdentifyTaxon,
  alike: readonly string[],
  all: readonly IdentifyTaxon[],
  castes: readonly Caste[],
): Question[] {
  const byAnswer = Map.groupBy(alike.length === 0 ? [""] : alike, (caste) => answerTo(taxon, caste, all, castes));
  return [...byAnswer].map(([answer, own]) => {
    const caste = own[0] ?? "";
    const choices = choicesFor(taxon, caste, answer, all, castes);
    return { id: `${taxon.slug}:${caste}`, taxon, caste, castes: own.filter(Boolean), answer, choices };
  });
}

function canBeDrawn(taxon: IdentifyTaxon, caste: string): boolean {
  const rows = bodyPlan(taxon.plan)?.rows ?? [];
  const said = rows.flatMap(({ id }) => told(taxon, id, caste, "") ?? []);
  const plain = said.filter(({ state }) => state.piles.length < 2 && state.words !== "varies");
  return said.length >= rows.length / 2 && plain.length >= said.length * LEAST_PLAIN;
}

/** What a field guide, a photograph or a clear view can show of a part; what takes a specimen is not shown. */
export function shownOf(taxon: IdentifyTaxon, part: string, caste: string): Told | undefined {
  const said = told(taxon, part, caste, "");
  return said === undefined || said.rows.every(({ evidence }) => evidence === "specimen") ? undefined : said;
}

/** Parts of a taxon that are described, but for its size. */
export function partsOf(taxon: IdentifyTaxon): string[] {
  return [...new Set(taxon.characters.map(({ part }) => part))].filter((part) => part !== "size");
}

/** The caste of another taxon that stands beside a caste; undefined where none can. */
function besideCaste(taxon: IdentifyTaxon, caste: string, other: IdentifyTaxon, castes: readonly Caste[]) {
  const view = viewsOf([taxon, other], castes).find(
    ({ castes: [own = []] }) => own.includes(caste) || own.length === 0,
  );
  return view === undefined ? undefined : (view.castes[1]?.[0] ?? "");
}

/** How far what is shown parts a taxon from another: outright, by hints, or not at all. */
export function parted(
  taxon: IdentifyTaxon,
  caste: string,
  other: IdentifyTaxon,
  castes: readonly Caste[],
): "settled" | "hinted" | "same" {
  const beside = besideCaste(taxon, caste, other, castes);
  if (beside === undefined) return "settled";
  let hinted = false;
  for (const part of partsOf(taxon)) {
    const [mine, its] = [shownOf(taxon, part, caste), shownOf(other, part, beside)];
    if (mine === undefined || its === undefined) continue;
    if (relation(valuesOf(mine.state), valuesOf(its.state)) !== "differ") continue;
    const rows = [...mine.rows, ...its.rows];
    if (rows.some(({ reliability }) => reliability === "misleads")) continue;
    if (rows.some(({ reliability, evidence }) => reliability === "settles" && evidence !== "specimen"))
      return "settled";
    hinted = true;
  }
  return hinted ? "hinted" : "same";
}

/**
 * Whether what settles a taxon against another takes a specimen, and no aggregate holds both: then no drawing can be named,
 * and none is asked of.
 */
function takesSpecimen(
  taxon: IdentifyTaxon,
  caste: string,
  other: IdentifyTaxon,
  all: readonly IdentifyTaxon[],
  castes: readonly Caste[],
): boolean {
  if (other === taxon || sharedAggregate(taxon, other, all) !== undefined) return false;
  if (parted(taxon, caste, other, castes) === "settled") return false;
  const beside = besideCaste(taxon, caste, other, castes) ?? "";
  const isHidden = (said: Told | undefined) =>
    said?.rows.some(({ reliability, evidence }) => reliability === "settles" && evidence === "specimen") === true;
  return partsOf(taxon).some(
    (part) => isHidden(told(taxon, part, caste, "")) && isHidden(told(other, part, beside, "")),
  );
}

/** The taxon, or the widest of the aggregates it shares with something that is not settled against it. */
function answerTo(
  taxon: IdentifyTaxon,
  caste: string,
  all: readonly IdentifyTaxon[],
  castes: readonly Caste[],
): IdentifyTaxon {
  const above = upwards(taxon, all);
  const needed = all.flatMap((other) => {
    if (other === taxon || other.members.length > 0) return [];
    const shared = sharedAggregate(taxon, other, all);
    return shared === undefined || parted(taxon, caste, other, castes) === "settled" ? [] : [shared];
  });
  return needed.reduce(
    (widest, each) => (above.indexOf(each.slug) > above.indexOf(widest.slug) ? each : widest),
    taxon,
  );
}

function choicesFor(
  taxon: IdentifyTaxon,
  caste: string,
  answer: IdentifyTaxon,
  all: readonly IdentifyTaxon[],
  castes: readonly Caste[],
): IdentifyTaxon[] {
  const above = upwards(taxon, all);
  const siblings = all.filter((other) => sharedAggregate(taxon, other, all) !== undefined);
  const named = [...above, ...siblings.map(({ slug }) => slug), ...taxon.lookAlikes];
  const seen = all
    .filter(({ firstSeen, outside }) => !outside && firstSeen === taxon.firstSeen)
    .map(({ slug }) => slug);
  const wanted = [answer.slug, ...new Set([...named, ...seen])].flatMap(
    (slug) => all.find((one) => one.slug === slug) ?? [],
  );
  const fair = wanted.filter(
    (other) =>
      other === answer ||
      above.includes(other.slug) ||
      sharedAggregate(taxon, other, all) !== undefined ||
      parted(taxon, caste, other, castes) !== "same",
  );
  const chosen = new Set([...new Set(fair)].slice(0, MOST_CHOICES));
  return all.filter((other) => chosen.has(other));
}

/** What an answer is worth: `more` names a species where what is shown settles an aggregate only. */
export type Judgement = "right" | "near" | "more" | "wrong";

/**
 * Judges an answer.
 *
 * @example judged(question, question.answer, all) // "right"
 */
export function judged({ taxon, answer }: Question, chosen: IdentifyTaxon, all: readonly IdentifyTaxon[]): Judgement {
  if (chosen.slug === answer.slug) return "right";
  if (chosen.slug === taxon.slug) return "more";
  if (upwards(chosen, all).includes(answer.slug)) return "more";
  return upwards(answer, all).includes(chosen.slug) ? "near" : "wrong";
}
