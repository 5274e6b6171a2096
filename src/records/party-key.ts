import { recorderKey } from "../scheme/suppressed-names.ts";

/** What parts the people of a party; a comma does not, for it also parts a surname from what follows. */
const BETWEEN_PEOPLE = /[|;&+]|(?<![\p{L}\p{M}])and(?![\p{L}\p{M}])/iu;

/** Two initials run together beside a name in capitals and small letters, as in "AB Smith"; longer runs are surnames. */
const RUN_OF_INITIALS = /(?<![\p{L}\p{M}\p{N}'’-])\p{Lu}{2}(?![\p{L}\p{M}\p{N}'’-])/gu;
const MIXED_CASE = /\p{Lu}\p{M}*\p{Ll}/u;

/**
 * The key of a recorder or party, by which visits and twins are told apart: without case, accents and punctuation, and
 * with all words in one order, so that neither "Smith, Ann" nor the order of a party's people matters. Someone named
 * twice in one cell counts once. Initials are words of their own, with dots, spaces or two run together, but for a cell all
 * in capitals, where a surname could be meant. Two parties that differ only in which word belongs to whom have one key.
 * It is no name to show. A key is its own key.
 *
 * @param written the cell as the record has it
 * @returns words parted by spaces; empty where there is no letter or figure
 * @example partyKey("Quill, Zoë & A.B. Reed") // => "a b quill reed zoe"
 */
export function partyKey(written: string): string {
  const spaced = MIXED_CASE.test(written)
    ? written.replaceAll(RUN_OF_INITIALS, (initials) => [...initials].join(" "))
    : written;
  const people = spaced.split(BETWEEN_PEOPLE).map((person) => wordsOf(person).join(" "));
  return wordsOf([...new Set(people)].join(" ")).join(" ");
}

function wordsOf(text: string): string[] {
  return recorderKey(text).split(" ").filter(Boolean).sort();
}
