import type { NameNote } from "./match-name.ts";
import type { NameIndex } from "./name-index.ts";
import type { ReadName } from "./read-name.ts";

/** Words after a name that deny it, unless an author follows as in "not Linnaeus". */
const DENIAL = /(?<![\p{L}\d])(?:not?|NOT?|Not?|[Nn]one|nil|[Aa]bsent|[Ww]ithout)(?![\p{L}\d])(?!\.? \p{Lu})/u;

/**
 * What of a matched name would be passed over though it may change its meaning: another taxon of the checklist among
 * the words after the epithet ("Bombus terrestris & B. pratorum"), words that are no name, or a denial.
 *
 * @param notes of the match: a subspecies that was set aside is not known to be one
 * @returns the words, or undefined where the rest is authorship
 * @example saysMore(readName("Bombus terrestris, Bombus pratorum"), [], names) // "Bombus"
 * @example saysMore(readName("Bombus terrestris (Linnaeus, 1758)"), [], names) // undefined
 */
export function saysMore(name: ReadName, notes: readonly NameNote[], names: NameIndex): string | undefined {
  const setAside = notes.some(({ code }) => code === "infraspecific_set_aside") ? name.infraspecific : "";
  if (setAside !== "" && !/^\p{L}[\p{L}-]+$/u.test(setAside)) return setAside;
  const rest = `${setAside} ${name.authorship}`.trim();
  if (rest === "") return undefined;
  const denial = DENIAL.exec(rest)?.[0];
  if (denial !== undefined) return denial;
  // An author's name has a capital, an epithet has none, and a genus has one.
  const words = rest.match(/[\p{L}-]{3,}/gu) ?? [];
  return words.find((word) => isAnotherTaxon(word, name, names));
}

function isAnotherTaxon(word: string, { epithets, genus }: ReadName, names: NameIndex): boolean {
  if (epithets.includes(word)) return false;
  const known = wordsOf(names);
  return known.has(word) || (word.toLowerCase() === genus.toLowerCase() && word !== word.toUpperCase());
}

const remembered = new WeakMap<NameIndex, ReadonlySet<string>>();

/** Genera with their capital, and epithets, of all names of the checklist. */
function wordsOf(names: NameIndex): ReadonlySet<string> {
  const before = remembered.get(names);
  if (before !== undefined) return before;
  const words = new Set<string>();
  for (const key of names.scientific.keys()) {
    const [genus = "", ...epithets] = key
      .replace("×", "")
      .replace(/ agg\.$/, "")
      .split(/[ /]/);
    words.add(genus.charAt(0).toUpperCase() + genus.slice(1));
    for (const epithet of epithets) words.add(epithet);
  }
  remembered.set(names, words);
  return words;
}
