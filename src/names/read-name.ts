import { cleanName } from "./name-text.ts";

/** Doubt or openness about a name: none of these is the species itself. */
export type NameQualifier = "cf." | "aff." | "nr" | "?";

/** A scientific name taken apart. Empty strings where a part is not there. */
export interface ReadName {
  /** The cleaned text, without the qualifier. */
  readonly text: string;
  readonly genus: string;
  /** True for "B." or "Bo.": `genus` is then the letters without the dot. */
  readonly genusAbbreviated: boolean;
  readonly subgenus: string;
  /** Species epithet in lower case, or two and more in alphabetical order for an open pair. */
  readonly epithets: readonly string[];
  readonly infraspecific: string;
  readonly authorship: string;
  /** Doubt stated in the name or in the qualifier's own field. */
  readonly qualifier: NameQualifier | undefined;
  /** What the qualifier's own field says that is no known qualifier. */
  readonly unreadQualifier: string;
  /** "agg.", "s.l.", complex, group: the name in its wide sense. */
  readonly isAggregate: boolean;
  /** "s.s." or "s.str.": the name in its strict sense. */
  readonly isStrict: boolean;
  /** "sp.", "spp.", "indet.": only the genus is named. */
  readonly isGenusOnly: boolean;
  readonly isHybrid: boolean;
}

const QUALIFIERS: readonly [NameQualifier, RegExp][] = [
  ["cf.", /(?<![\p{L}\d])(?:cf|cfr|conf|confer)(?:\.|(?![\p{L}\d]))/giu],
  ["aff.", /(?<![\p{L}\d])aff(?:\.|(?= |$))/giu],
  ["nr", /(?<![\p{L}\d])(?:nr|near)(?:\.|(?= |$))/giu],
  ["?", /\?|(?<![\p{L}\d])(?:possible|possibly|probable|probably|prob|poss|uncertain)(?:\.|(?= |$))/giu],
];
const WIDE_SENSE =
  /(?<![\p{L}\d])(?:s\. ?l\.?|s\. ?lat\.?|sens(?:u|\.) ?lat(?:o|\.)?|agg(?:r|reg|regate)?\.?|(?:species )?(?:complex|group|gr\.|grp\.?))(?= |$|\))/giu;
const STRICT_SENSE = /(?<![\p{L}\d])(?:s\. ?s\.?|s\. ?str\.?|sens(?:u|\.) ?str(?:icto|\.)?)(?= |$)/giu;
const GENUS_ONLY = /(?<![\p{L}\d])(?:spp?\.?|species|indet\.?|undet\.?)(?= |$)/giu;
const RANK_MARK = /^(?:ssp|subsp|subspecies|var|f|forma|form|morph|ab|race)\.?$/i;
const AUTHOR_START =
  /^[("\p{Lu}\d&[]|^d'|^(?:de|van|von|der|den|du|la|le|ex|in|et|and|auct|nec|non|sensu|emend)(?:[ .']|$)/u;

/**
 * Takes a scientific name apart, with the text of identificationQualifier where the record has one. Case is put right
 * ("BOMBUS TERRESTRIS"), authorship, subgenus and marks are set aside. Nothing is looked up: see `match` of the
 * checklist for what the name stands for.
 *
 * @example readName("Bombus (Pyrobombus) cf. pratorum (L., 1761)") // { genus: "Bombus", subgenus: "Pyrobombus", epithets: ["pratorum"], authorship: "(L., 1761)", qualifier: "cf.", … }
 */
export function readName(scientificName: string, identificationQualifier = ""): ReadName {
  const marks = takeMarks(cleanName(scientificName));
  const field = takeMarks(cleanName(identificationQualifier));
  const words = withProperCase(marks.rest);
  const isHybrid = /(?:^| )x (?=\p{L})|×/u.test(words);
  const parts = splitWords(words);
  return {
    text: words,
    ...parts,
    qualifier: marks.qualifier ?? field.qualifier,
    unreadQualifier: leftOver(field.rest, parts.epithets, parts.genus),
    isAggregate: marks.isAggregate || field.isAggregate,
    isStrict: marks.isStrict || field.isStrict,
    isGenusOnly: marks.isGenusOnly || field.isGenusOnly,
    isHybrid,
  };
}

/**
 * The key under which a name of the checklist is found: genus and epithets in lower case, marked for the wide sense
 * of a single epithet. An open pair is the same with and without "agg.".
 *
 * @example nameKey(readName("Bombus lucorum s.l.")) // "bombus lucorum agg."
 */
export function nameKey(name: ReadName): string {
  const words = [name.genus, name.epithets.join("/"), name.infraspecific].filter(Boolean).join(" ").toLowerCase();
  const wide = name.isAggregate && name.epithets.length === 1 ? " agg." : "";
  return `${name.isHybrid ? "×" : ""}${words}${wide}`;
}

interface Marks {
  readonly rest: string;
  readonly qualifier: NameQualifier | undefined;
  readonly isAggregate: boolean;
  readonly isStrict: boolean;
  readonly isGenusOnly: boolean;
}

function takeMarks(text: string): Marks {
  let rest = text;
  const take = (pattern: RegExp): boolean => {
    const without = rest.replaceAll(pattern, " ");
    const found = without !== rest;
    rest = without;
    return found;
  };
  let qualifier: NameQualifier | undefined;
  for (const [name, pattern] of QUALIFIERS) if (take(pattern)) qualifier ??= name;
  const isAggregate = take(WIDE_SENSE);
  const isStrict = take(STRICT_SENSE);
  const isGenusOnly = take(GENUS_ONLY);
  rest = rest
    .replaceAll(/\( *\)|\[ *\]/g, " ")
    .replaceAll(/[\s-]+(?=\s|$)/g, " ")
    .replaceAll(/ +/g, " ")
    .trim();
  return { rest, qualifier, isAggregate, isStrict, isGenusOnly };
}

/** A text of one case only is put in lower case with a capital at the front; mixed case is left, as it marks authors. */
function withProperCase(text: string): string {
  const lower = text.toLowerCase();
  const oneCase = text === lower || (text === text.toUpperCase() && text.length > 3);
  const plain = oneCase ? lower : text;
  return plain.replace(/\p{L}/u, (letter) => letter.toUpperCase());
}

type NameParts = Pick<
  ReadName,
  "genus" | "genusAbbreviated" | "subgenus" | "epithets" | "infraspecific" | "authorship"
>;

function splitWords(text: string): NameParts {
  const tokens = text
    .replaceAll(/ ?\/ ?| or /g, "/")
    .replaceAll(/\/\p{Lu}\p{L}*\.? (?=\p{Ll})/gu, "/")
    .replaceAll(/×|(?:^| )x(?= )/g, " ")
    .trim()
    .split(/ +/);
  const first = tokens.shift() ?? "";
  if (first.includes("/")) return { ...NO_PARTS, epithets: epithetsOf(first) };
  const genusAbbreviated = /^\p{L}{1,4}\.$/u.test(first);
  const subgenus = /^\((\p{L}+\.?)\)$/u.exec(tokens[0] ?? "")?.[1] ?? "";
  // "Bombus (L.)" has an author in brackets, "Bombus (Psithyrus) vestalis" a subgenus: an epithet must follow.
  const hasSubgenus = subgenus !== "" && /^\p{Ll}/u.test(tokens[1] ?? "");
  if (hasSubgenus) tokens.shift();
  const epithets: string[] = [];
  let infraspecific = "";
  while (tokens.length > 0 && !AUTHOR_START.test(tokens[0] ?? "") && infraspecific === "") {
    const token = tokens.shift() ?? "";
    if (RANK_MARK.test(token)) continue;
    if (epithets.length === 0) epithets.push(...epithetsOf(token));
    else infraspecific = token.replaceAll(/[.,]/g, "").toLowerCase();
  }
  // "Plantago major L. subsp. intermedia (Gilib.) Lange": the species' author stands before the subspecies.
  const mark = infraspecific === "" && epithets.length === 1 ? tokens.findIndex(isMarkOfEpithet) : -1;
  if (mark >= 0) infraspecific = tokens.splice(0, mark + 2).at(-1) ?? "";
  return {
    genus: first.replaceAll(/[.,]/g, ""),
    genusAbbreviated,
    subgenus: hasSubgenus ? subgenus : "",
    epithets,
    infraspecific,
    authorship: tokens.join(" "),
  };
}

/** A mark of rank with an epithet after it; "f." with an author after it is a son's. */
function isMarkOfEpithet(token: string, index: number, tokens: readonly string[]): boolean {
  const next = tokens[index + 1] ?? "";
  return RANK_MARK.test(token) && /^\p{Ll}[\p{L}-]{2,}$/u.test(next) && !AUTHOR_START.test(next);
}

const NO_PARTS: NameParts = {
  genus: "",
  genusAbbreviated: false,
  subgenus: "",
  epithets: [],
  infraspecific: "",
  authorship: "",
};

/** "terrestris/lucorum" and "terrestris/B. lucorum" in alphabetical order. */
function epithetsOf(token: string): string[] {
  return token
    .split("/")
    .map((part) => part.toLowerCase().replaceAll(/[.,]/g, ""))
    .filter(Boolean)
    .sort();
}

/** A qualifier's field often repeats the name ("cf. terrestris"): what is left beyond it was not understood. */
function leftOver(text: string, epithets: readonly string[], genus: string): string {
  const known = new Set([...epithets, genus.toLowerCase()]);
  return text
    .split(" ")
    .filter((word) => word !== "" && !known.has(word.toLowerCase()))
    .join(" ");
}
