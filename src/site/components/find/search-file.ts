/** What `search.json` holds: everything of the atlas that has a name, and the squares that have a page. */

/** What an entry is, in the words of the page. */
export type EntryKind = "species" | "group" | "outside" | "first-seen" | "region" | "page" | "table";

/** How a name belongs to its entry: its own, an old or other scientific name, a name of some language, a word for it. */
export type NameKind = "own" | "scientific" | "synonym" | "vernacular" | "topic";

/** One name: text, kind, and the language it is of where that is not the page's. */
export type SearchName = readonly [text: string, kind: NameKind, language?: string];

/** Something that can be found. */
export interface SearchEntry {
  readonly kind: EntryKind;
  /** Address from the top of the pages of this language. */
  readonly path: string;
  readonly title: string;
  /** Language of the title, where that is not the page's. */
  readonly language?: string;
  readonly names: readonly SearchName[];
}

/** The file: entries with what is sought most first, and figures of the squares after their letters. */
export interface SearchFile {
  readonly entries: readonly SearchEntry[];
  /** 10 km squares that have a page: what a code ends with, by its beginning; `NZ` and `26` are NZ26. */
  readonly squares: Readonly<Record<string, string>>;
  /** Grids of the atlas, for positions in degrees. */
  readonly grids: readonly string[];
}

/**
 * Codes of squares packed by their beginning, since they are most of the file.
 *
 * @param squares codes of 10 km squares
 * @example packSquares(["NZ26", "NZ27", "O13"]) // { NZ: "26 27", O: "13" }
 */
export function packSquares(squares: readonly string[]): Record<string, string> {
  const byBeginning = Map.groupBy([...squares].sort(), (code) => code.slice(0, -2));
  return Object.fromEntries(
    [...byBeginning].map(([beginning, codes]) => [beginning, codes.map((code) => code.slice(-2)).join(" ")]),
  );
}

/**
 * Whether a square has a page.
 *
 * @example hasSquare({ NZ: "26 27" }, "NZ27") // true
 */
export function hasSquare(squares: SearchFile["squares"], code: string): boolean {
  return (
    Object.hasOwn(squares, code.slice(0, -2)) &&
    squares[code.slice(0, -2)]?.split(" ").includes(code.slice(-2)) === true
  );
}
