import { type CasteCount, type CasteVocabulary, joinCounts } from "./caste-classes.ts";
import { cleanName } from "./name-text.ts";

/**
 * Something wrong with what a record says of caste.
 * - `contradiction`: the same individuals are of two classes, such as male and worker
 * - `caste_not_of_taxon`: a class the taxon cannot have, such as the worker of a cuckoo bee
 * - `either`: one class or another, left open
 * - `unread_words`: words that are not in the vocabulary
 */
export interface CasteProblem {
  readonly code: "contradiction" | "caste_not_of_taxon" | "either" | "unread_words";
  readonly found: string;
}

/** The counts of a text or a record, and what is wrong with them. */
export interface ReadCaste {
  readonly counts: readonly CasteCount[];
  readonly problems: readonly CasteProblem[];
}

const QUANTITIES = new Set(["several", "some", "many", "few", "a", "an", "the", "x", "×", "of", "ca", "c", "c."]);
const NOTHING = /^(?:|not stated|not recorded|unknown|unsexed|undetermined|indeterminate|indet\.?|n\/?a|-|\?)$/i;
/** A range, a fraction and a negative number are one part each, and no count. */
const PARTS = /\d+(?: ?[-.,] ?\d+)+|(?<![\p{L}\d])-\d+|\d+|\/|[♀♂☿⚥]+|[^\s\d/()♀♂☿⚥:=]+/gu;
/** Characters of no text on castes; what is longer is a remark in the wrong column. */
const LONGEST = 400;
const NUMBER_WORDS: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, four: 4, five: 5, six: 6 };

/**
 * Reads one text through a vocabulary, without regard to the taxon. No counts where it says nothing of caste.
 *
 * @example readCasteText("2 queens; 4 workers", vocabulary) // { counts: [{ caste: "queen", count: 2 }, { caste: "worker", count: 4 }], problems: [] }
 */
export function readCasteText(text: string, vocabulary: CasteVocabulary): ReadCaste {
  if (NOTHING.test(text)) return { counts: [], problems: [] };
  const counts: CasteCount[] = [];
  const problems: CasteProblem[] = [];
  if (text.length > LONGEST)
    return { counts: [], problems: [{ code: "unread_words", found: `${text.slice(0, 60)}…` }] };
  for (const piece of text.toLowerCase().split(/(?<!\d),|,(?!\d)|[;|+&]| and /)) {
    const items = readPiece(piece, vocabulary);
    problems.push(...items.problems);
    counts.push(...items.counts);
  }
  return { counts: addUp(counts), problems };
}

/** A number, a class of the vocabulary, a slash, or a word that is neither. */
type Token =
  | { readonly number: number }
  | { readonly caste: string; readonly short: boolean }
  | { readonly slash: true }
  | { readonly unread: string };

function readPiece(piece: string, vocabulary: CasteVocabulary): ReadCaste {
  const tokens = tokensOf(piece, vocabulary);
  const unread = tokens.flatMap((token) => ("unread" in token ? [token.unread] : []));
  const problems: CasteProblem[] = unread.length > 0 ? [{ code: "unread_words", found: unread.join(" ") }] : [];
  const stated = tokens.filter((token) => "caste" in token);
  const isCounted = tokens.some((token) => "number" in token);
  if (!isCounted && tokens.some((token) => "slash" in token) && new Set(stated.map(({ caste }) => caste)).size > 1) {
    return { counts: [], problems: [...problems, { code: "either", found: piece.trim() }] };
  }
  // Words side by side describe the same individuals ("male worker"); counts, letters and signs make a list ("1q 3w m").
  if (!isCounted && stated.length > 1 && stated.some(({ short }) => !short))
    return joinPhrase(stated, piece, vocabulary, problems);
  return { counts: countTokens(tokens), problems };
}

function joinPhrase(
  stated: readonly { caste: string }[],
  piece: string,
  vocabulary: CasteVocabulary,
  problems: CasteProblem[],
): ReadCaste {
  let counts: CasteCount[] | undefined = [];
  for (const { caste } of stated) counts = counts && joinCounts(counts, [{ caste, count: undefined }], vocabulary);
  if (counts !== undefined) return { counts, problems };
  return { counts: [], problems: [...problems, { code: "contradiction", found: piece.trim() }] };
}

/** "3 w" and "w 3": a text that begins with a class and ends with a number has its numbers behind. */
function countTokens(tokens: readonly Token[]): CasteCount[] {
  const told = tokens.filter((token) => "caste" in token || "number" in token);
  const first = told[0];
  const last = told.at(-1);
  const numbersBehind = first !== undefined && last !== undefined && "caste" in first && "number" in last;
  const ordered = numbersBehind ? told.toReversed() : told;
  const counts: CasteCount[] = [];
  let count: number | undefined;
  for (const token of ordered) {
    if ("number" in token) count = token.number;
    else {
      counts.push({ caste: token.caste, count });
      count = undefined;
    }
  }
  return (numbersBehind ? counts.toReversed() : counts).filter((one) => one.count !== 0);
}

function tokensOf(piece: string, vocabulary: CasteVocabulary): Token[] {
  const parts = piece.match(PARTS) ?? [];
  const { known, longest } = wordsOf(vocabulary);
  const tokens: Token[] = [];
  for (let at = 0; at < parts.length; ) {
    const part = parts[at] ?? "";
    const phrase = longestPhrase(parts, at, longest, known);
    const number = /^\d{1,7}$/.test(part) ? Number(part) : NUMBER_WORDS[part];
    if (phrase !== undefined) {
      if (phrase.caste !== "") tokens.push({ caste: phrase.caste, short: phrase.short });
      at += phrase.words;
      continue;
    }
    if (part === "/") tokens.push({ slash: true });
    else if (number !== undefined) tokens.push({ number });
    else if (!QUANTITIES.has(part)) tokens.push({ unread: part });
    at += 1;
  }
  return tokens;
}

function longestPhrase(parts: readonly string[], at: number, longest: number, known: ReadonlyMap<string, string>) {
  for (let words = Math.min(longest, parts.length - at); words > 0; words--) {
    const phrase = parts.slice(at, at + words).join(" ");
    // "♀♀" is the plural of "♀", as on labels.
    const caste =
      known.get(phrase) ?? known.get(phrase.replace(/\.$/, "")) ?? known.get(phrase.replace(/^([♀♂☿⚥])\1+$/u, "$1"));
    if (caste !== undefined)
      return { caste, words, short: phrase.replace(/\.$/, "").length === 1 || /^[♀♂☿⚥]/u.test(phrase) };
  }
  return undefined;
}

/** Words of a vocabulary to class ids, and of how many words the longest is. */
interface Words {
  readonly known: ReadonlyMap<string, string>;
  readonly longest: number;
}

/** A vocabulary is asked once for every distinct text, of which there may be a million. */
const remembered = new WeakMap<CasteVocabulary, Words>();

function wordsOf(vocabulary: CasteVocabulary): Words {
  const before = remembered.get(vocabulary);
  if (before !== undefined) return before;
  const known = wordMap(vocabulary);
  const words = { known, longest: Math.max(1, ...[...known.keys()].map((word) => word.split(" ").length)) };
  remembered.set(vocabulary, words);
  return words;
}

/** Words to class ids; ignored words to the empty id. */
function wordMap({ classes, ignored = [] }: CasteVocabulary): ReadonlyMap<string, string> {
  const words = classes.flatMap(({ id, label, words }) =>
    [id, label, ...words].map((word) => [cleanName(word).toLowerCase(), id] as const),
  );
  return new Map([...ignored.map((word) => [cleanName(word).toLowerCase(), ""] as const), ...words]);
}

/** One count a class, in the order first met; a number beside none keeps the number. */
function addUp(counts: readonly CasteCount[]): CasteCount[] {
  const sums = new Map<string, number | undefined>();
  for (const { caste, count } of counts) {
    const before = sums.get(caste);
    sums.set(caste, before === undefined ? count : before + (count ?? 0));
  }
  return [...sums].map(([caste, count]) => ({ caste, count }));
}
