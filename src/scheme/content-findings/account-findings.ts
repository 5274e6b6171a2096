import type { Account } from "../account.ts";
import { type Content, holdsFor } from "./content.ts";
import type { ContentFinding } from "./finding.ts";

const LEVELS = ["sight", "photograph", "specimen"] as const;

type At = (check: string, field: string, value: string, found: string, wayOut: string) => ContentFinding;

/**
 * Accounts whose front matter does not agree with the characters: other sizes, castes the taxon lacks, and less evidence
 * than what settles the taxon asks for.
 *
 * @example accountFindings(content).map(({ check }) => check) // ["size_differs"]
 */
export function accountFindings(content: Content): ContentFinding[] {
  return [...content.accounts.values()].flatMap((account) => {
    const at: At = (check, field, value, found, wayOut) => ({
      check,
      file: account.file,
      row: null,
      field,
      value,
      found,
      wayOut,
    });
    return [...sizes(account, content, at), ...castes(account, content, at), ...evidence(account, content, at)];
  });
}

function sizes({ front }: Account, { characters }: Content, at: At): ContentFinding[] {
  return front.sizes.flatMap(({ caste, mm: [from, to] }) => {
    const row = characters.find(
      (one) => one.taxonID === front.taxonID && one.part === "size" && one.form === "" && holdsFor(one.castes, caste),
    );
    const said = lengthOf(row?.state ?? "");
    if (row === undefined || said === undefined || (said[0] === from && said[1] === to)) return [];
    const [value, other] = [`${caste} ${from}–${to} mm`, row.state];
    return [
      at(
        "size_differs",
        "sizes",
        value,
        `is ${other} in row ${row.row} of characters.csv`,
        "correct one, or leave it out here",
      ),
    ];
  });
}

/**
 * A length as `characters.csv` writes it.
 *
 * @example lengthOf("11–17 mm") // [11, 17]
 * @example lengthOf("small") // undefined
 */
export function lengthOf(state: string): [from: number, to: number] | undefined {
  const [, from, to = from] = state.match(/^([\d.]+)(?:\s*[–-]\s*([\d.]+))?\s*mm$/) ?? [];
  return from === undefined || to === undefined ? undefined : [Number(from), Number(to)];
}

function castes({ front }: Account, content: Content, at: At): ContentFinding[] {
  const own = content.taxa.find(({ taxonID }) => taxonID === front.taxonID)?.castes ?? [];
  if (own.length === 0) return [];
  const named = [
    ...front.sizes.map(({ caste }) => ({ caste, field: "sizes" })),
    ...castesNamed(front.evidence, content).map((caste) => ({ caste, field: "evidence" })),
  ];
  return named
    .filter(({ caste }) => !own.includes(caste))
    .map(({ caste, field }) =>
      at("caste_not_of_taxon", field, caste, "is no caste of the taxon in checklist.csv", `write ${own.join(", ")}`),
    );
}

/** Castes a text names in words of at least four letters. */
function castesNamed(text: string, { settings }: Content): string[] {
  const words = new Set(text.toLowerCase().match(/\p{L}{4,}/gu));
  return settings.castes.filter((caste) => caste.words.some((word) => words.has(word))).map(({ id }) => id);
}

/**
 * Clauses between semicolons: each asks for some evidence, for the castes it names, or for all that no other clause
 * names; a caste needs the most that is asked of it. What is of a form, a group, or "an expert view" is not weighed.
 */
function evidence({ front }: Account, content: Content, at: At): ContentFinding[] {
  const own = content.taxa.find(({ taxonID }) => taxonID === front.taxonID)?.castes ?? [];
  const named = castesNamed(front.evidence, content);
  const asked = new Map<string, number>();
  for (const clause of front.evidence.split(";")) {
    const level = LEVELS.findLastIndex((word) => clause.toLowerCase().includes(word));
    if (level < 0 || /\b(?:group|view|form)\b/i.test(clause)) continue;
    const inClause = castesNamed(clause, content);
    for (const caste of inClause.length > 0 ? inClause : own.filter((one) => !named.includes(one)))
      asked.set(caste, Math.max(level, asked.get(caste) ?? 0));
  }
  const less = [...asked].flatMap(([caste, level]) => {
    const needed = easiest(front.taxonID, caste, content);
    return needed === undefined || needed.level <= level ? [] : [{ caste, ...needed }];
  });
  return [...new Set(less.map(({ row }) => row))].flatMap((row) => {
    const [first, ...more] = less.filter((one) => one.row === row);
    if (first === undefined) return [];
    const whom = [first, ...more].map(({ caste }) => caste).join(", ");
    const found = `asks for less than what settles it for ${whom}: ${first.part}, on a ${LEVELS[first.level] ?? ""} (row ${row} of characters.csv)`;
    return [at("evidence_weaker", "evidence", front.evidence, found, "ask for more, or say what settles it on less")];
  });
}

function easiest(taxonID: string, caste: string, { characters }: Content) {
  return characters
    .filter(
      (row) =>
        row.taxonID === taxonID && row.reliability === "settles" && row.form === "" && holdsFor(row.castes, caste),
    )
    .map(({ part, evidence: shown, row }) => ({ part, row, level: (LEVELS as readonly string[]).indexOf(shown) }))
    .sort((one, other) => one.level - other.level)[0];
}
