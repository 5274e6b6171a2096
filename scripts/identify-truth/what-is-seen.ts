/**
 * What a person sees of an animal and says: how often a part is seen, how an animal is worn, how people are mistaken. It
 * reads the table of characters for itself and shares no number with the helper; but both hold yellow and lemon, and red
 * and orange, for shades that are mixed up, and both assume that looks are independent of each other.
 */
import { drawFrom, type Random, runningTotals } from "../demonstration/random.ts";

/** A row of the table of characters. */
export interface Row {
  readonly castes: readonly string[];
  readonly form: string;
  readonly part: string;
  readonly state: string;
  readonly note: string;
}

/** What can be asked, as the page offers it. */
export interface Offered {
  readonly id: string;
  readonly parts: readonly string[];
  readonly states: readonly string[];
}

/** How often each part is in view, of a hundred animals; of any other, three. */
const IN_VIEW: Readonly<Record<string, number>> = {
  ...{ tail: 90, collar: 80, "mid-thorax": 70, "rear-thorax": 50, T2: 45, T1: 30, T3: 30 },
  ...{ face: 35, "hind-leg": 30, wings: 30, "face-length": 8, coat: 15 },
};
/** One answer in ten is mistaken; of these, one in two names a colour beside the true one. */
const MISTAKEN = 0.1;
const BESIDE = 0.5;
/** Colours in a row, from dark through warm to pale: those beside each other are mixed up. */
const ROW = ["black", "brown", "ginger", "red", "orange", "yellow", "lemon", "white", "buff", "grey"];
/** By the end of the year one animal in four is worn; one in thirty is of another form, where there is one. */
const WORN_AT_LAST = 0.25;
const OTHER_FORM = 1 / 30;
/** Yellow is called lemon, and red orange, by one in five, and the other way round. */
const OTHER_SHADE = 1 / 5;
const SHADES: Readonly<Record<string, string>> = { yellow: "lemon", lemon: "yellow", red: "orange", orange: "red" };
/** People say the caste of one animal in three, and are wrong about one in twelve of these. */
const CASTE_SAID = 1 / 3;
const CASTE_WRONG = 1 / 12;

/**
 * What is said of one animal.
 *
 * @param rows of its taxon
 * @param animal its caste and date
 * @param offered questions and answers of the page
 * @param count most parts that are said; fewer where the table tells of fewer
 */
export function whatIsSeen(
  rows: readonly Row[],
  animal: { caste: string; date: string },
  offered: readonly Offered[],
  count: number,
  random: Random,
): Map<string, string> {
  const form = formOf(rows, animal, random);
  const seen = new Map<string, string>();
  const left = offered.map((question) => ({ question, weight: IN_VIEW[question.id] ?? 3 }));
  while (seen.size < count && left.length > 0) {
    const [{ question } = { question: undefined }] = left.splice(drawn(left, random), 1);
    if (question === undefined) break;
    const part =
      question.parts.length === 3
        ? random.chance(0.6)
          ? question.parts[1]
          : random.pick(question.parts)
        : question.parts[0];
    const state = trueState(rows, part ?? "", animal.caste, form, random);
    if (state !== undefined && question.states.includes(state))
      seen.set(question.id, said(state, question.states, random));
  }
  return seen;
}

/**
 * The caste that is said, if any.
 *
 * @param castes the page offers
 */
export function casteSaid(caste: string, castes: readonly string[], random: Random): string | undefined {
  const [says, wrong] = [random.chance(CASTE_SAID), random.chance(CASTE_WRONG)];
  const other = random.pick(castes);
  return !says || caste === "" ? undefined : wrong ? other : caste;
}

function drawn(left: readonly { weight: number }[], random: Random): number {
  const totals = runningTotals(left.map(({ weight }) => weight));
  return drawFrom(totals, random);
}

function formOf(rows: readonly Row[], { caste, date }: { caste: string; date: string }, random: Random): string {
  const forms = [...new Set(rows.filter((row) => holds(row, caste)).map(({ form }) => form))].filter(Boolean);
  const year = Number(date.slice(5, 7)) / 12;
  const [worn, other] = [random.chance(WORN_AT_LAST * year), random.chance(OTHER_FORM)];
  const others = forms.filter((form) => form !== "worn");
  if (worn && forms.includes("worn")) return "worn";
  return other && others.length > 0 ? random.pick(others) : "";
}

function trueState(
  rows: readonly Row[],
  part: string,
  caste: string,
  form: string,
  random: Random,
): string | undefined {
  const ofPart = rows.filter((row) => row.part === part && holds(row, caste));
  const inForm = ofPart.filter((row) => row.form === form);
  const usual = inForm.length > 0 ? inForm : ofPart.filter((row) => row.form === "");
  const own = usual.filter(({ castes }) => castes.length > 0);
  const row = (own.length > 0 ? own : usual)[0];
  if (row === undefined) return undefined;
  if (row.state !== "varies") return row.state === "absent" ? "none" : row.state;
  const [first = ""] = row.note.split(/[.:]/);
  const colours = first.split(/[^a-z]+/i).filter((word) => ROW.includes(word) || word === "clear" || word === "smoky");
  return colours.length === 0 ? undefined : random.pick(colours);
}

function said(state: string, answers: readonly string[], random: Random): string {
  const at = ROW.indexOf(state);
  const beside =
    at < 0 ? [] : [ROW[at - 1], ROW[at + 1]].filter((colour) => colour !== undefined && answers.includes(colour));
  const others = answers.filter((answer) => answer !== state);
  const shade = SHADES[state] ?? "";
  if (random.chance(OTHER_SHADE) && answers.includes(shade)) return shade;
  if (!random.chance(MISTAKEN) || others.length === 0) return state;
  return random.chance(BESIDE) && beside.length > 0 ? (random.pick(beside) ?? state) : random.pick(others);
}

function holds({ castes }: Row, caste: string): boolean {
  return castes.length === 0 || castes.includes(caste);
}
