import type { Character } from "../../../publishing/contracts.ts";

/** Colours of pile, skin and wing that are drawn; any other state is shown as its word alone. */
export const PILES = [
  "black",
  "yellow",
  "lemon",
  "white",
  "red",
  "orange",
  "buff",
  "ginger",
  "brown",
  "grey",
  "smoky",
  "clear",
  "blue",
  "green",
  "bronze",
] as const;
export type Pile = (typeof PILES)[number];

/** Dark marks on the colour of a part. "yellow sides" is yellow at the sides and dark between. */
export const MARKS = [
  "sides",
  "broken",
  "spots",
  "stripes",
  "band",
  "ring",
  "half",
  "tip",
  "stalked",
  "cup",
  "arrow",
] as const;
export type Mark = (typeof MARKS)[number];

/** Both ways to write that a mark was looked for and is not there. */
const ABSENT = new Set(["none", "absent"]);

/** State of one part of the body: one colour, two where it varies, none where the part is absent, else a word. */
export interface PartState {
  /** As the scheme's table writes it, in its language: "black", "yellow sides", "yellow or black", "none". */
  readonly words: string;
  readonly piles: readonly Pile[];
  /** The mark on the first colour, if any. */
  readonly mark: Mark | undefined;
  readonly absent: boolean;
}

/** Whether a word is a colour that is drawn. @example isPile("buff") // true */
export function isPile(word: string): word is Pile {
  return (PILES as readonly string[]).includes(word);
}

function isMark(word: string): word is Mark {
  return (MARKS as readonly string[]).includes(word);
}

/**
 * The state a part is in, from the rows of `characters.csv` that describe it.
 *
 * @param rows of one part, one caste and one form, in their order
 * @returns undefined without rows
 * @example partState([{ state: "varies", note: "yellow or black: narrow.", … }]) // { words: "yellow or black", piles: ["yellow", "black"], mark: undefined, absent: false }
 */
export function partState(rows: readonly Pick<Character, "state" | "note">[]): PartState | undefined {
  const [first] = rows;
  if (first === undefined) return undefined;
  const named = rows.map(({ state }) => state).filter((state) => state !== "varies");
  const said = named.length > 0 ? named : [first.note.split(/[:.]/)[0] ?? ""];
  const words = said.flatMap((state) => state.toLowerCase().match(/\p{L}+/gu) ?? []);
  const piles = [...new Set(words.filter(isPile))].slice(0, 2);
  const [only = ""] = named;
  if (named.length === 1 && ABSENT.has(only)) return { words: "none", piles: [], mark: undefined, absent: true };
  if (rows.some(({ state }) => state === "varies") || named.length > 1) {
    const two = piles.length > 1;
    return { words: two ? piles.join(" or ") : "varies", piles: two ? piles : [], mark: undefined, absent: false };
  }
  const plain = words.every((word) => isPile(word) || isMark(word));
  return {
    words: only,
    piles: plain ? piles.slice(0, 1) : [],
    mark: plain ? words.find(isMark) : undefined,
    absent: false,
  };
}
