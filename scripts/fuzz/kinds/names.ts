import { buildChecklist, type ChecklistTaxon } from "../../../src/names/checklist.ts";
import { isNameRefusal } from "../../../src/names/match-name.ts";
import type { Random } from "../../demonstration/random.ts";
import { cased, spaced, spoilt, wide } from "../spoil.ts";
import type { Kind, Outcome } from "../trial.ts";
import { TAXA } from "./taxa.ts";

const CHECKLIST = buildChecklist(TAXA);

interface NameCase {
  text: string;
  qualifier: string;
  /** The taxon meant, "refused" where it must not be matched, "any" for a spoilt name. */
  expected: string;
}

/** Names of a checklist with aggregates, synonyms and two genera of one letter, as people write and spoil them. */
export const names: Kind<NameCase> = { name: "names", share: 0.1, draw, judge };

function draw(random: Random): NameCase {
  const taxon = random.pick(TAXA);
  const other = random.pick(TAXA.filter(({ taxonId }) => taxonId !== taxon.taxonId));
  const name = random.pick([taxon.scientificName, ...taxon.synonyms]);
  const way = random.whole(0, 11);
  const meant = (text: string): NameCase => ({ text, qualifier: "", expected: taxon.taxonId });
  const never = (text: string, qualifier = ""): NameCase => ({ text, qualifier, expected: "refused" });
  if (way === 0) return meant(name);
  if (way === 1)
    return meant(random.pick([name.toUpperCase(), name.toLowerCase(), ` ${name.replace(" ", "\u00A0  ")}`]));
  if (way === 2)
    return meant(`${name} ${random.pick(["(Linnaeus, 1758)", "L.", "Smith & Jones, 1900", "(Fabricius)"])}`);
  if (way === 3) return meant(random.pick(Object.values(taxon.vernacular).flat().concat(name)));
  if (way === 4) return isSpecies(taxon) ? meant(name.replace(/^(\S)\S+/, "$1.")) : meant(name);
  if (way === 5)
    return never(
      name.replace(" ", random.pick([" cf. ", " aff. ", " ? ", " nr. "])) + (name.includes(" ") ? "" : " cf. x"),
    );
  if (way === 6) return never(name, random.pick(["cf.", "?", "possibly", "aff.", "not sure"]));
  if (way === 7) return never(`${name}${random.pick([" & ", ", ", " + ", " and ", "; ", " "])}${other.scientificName}`);
  if (way === 8)
    return never(
      random.pick(["", " ", "\u0000", "bee", "Bombus nonexistus", "Apis mellifera", "sp.", "x", "-", "NaN"]),
    );
  if (way === 9) return never(`${name} ${random.pick(["not", "NOT", "absent", "none", "not seen"])}`);
  return {
    text:
      way === 10
        ? spoilt(random, name)
        : random.pick([spaced, cased, (_: Random, text: string) => wide(text)])(random, name),
    qualifier: "",
    expected: "any",
  };
}

function isSpecies({ rank }: ChecklistTaxon): boolean {
  return rank === "species";
}

function judge({ text, qualifier, expected }: NameCase): Outcome {
  const answer = CHECKLIST.match(text, qualifier);
  if (isNameRefusal(answer)) {
    if (answer.refused.length > 600) return { answer: "refused", wrong: "the refusal quotes a text of any length" };
    const isRight = expected === "any" || expected === "refused";
    return isRight ? { answer: "refused" } : { answer: "refused", wrong: answer.refused };
  }
  const found = answer.taxonId;
  if (expected === "any")
    return byScan(text, found) ? { answer: "accepted" } : { answer: "accepted", wrong: `read as ${found}` };
  return found === expected
    ? { answer: "accepted" }
    : { answer: "accepted", wrong: `read as ${found}, not ${expected}` };
}

/** A plain scan: the letters of one of the taxon's own names stand in the text, and of no other taxon's longer name. */
function byScan(text: string, taxonId: string): boolean {
  const letters = lettersOf(text);
  const fitting = TAXA.flatMap((taxon) => namesOf(taxon).map((name) => ({ taxon, name: lettersOf(name) })))
    .filter(({ name }) => letters.includes(name) || letters.startsWith(shortened(name)))
    .sort((a, b) => b.name.length - a.name.length);
  return fitting.some(
    ({ taxon, name }) => taxon.taxonId === taxonId && name.length >= (fitting[0]?.name.length ?? 0) - 4,
  );
}

function namesOf({ scientificName, synonyms, vernacular }: ChecklistTaxon): string[] {
  return [scientificName, ...synonyms, ...Object.values(vernacular).flat()];
}

/** Without the genus but for its first letter. */
function shortened(name: string): string {
  return name.charAt(0) + name.replace(/^(?:bombus|bombylius|psithyrus)/, "");
}

function lettersOf(text: string): string {
  return [...text.toLowerCase()].filter((letter) => letter >= "a" && letter <= "z").join("");
}
